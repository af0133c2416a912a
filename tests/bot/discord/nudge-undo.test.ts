import { expect, it } from 'vitest'
import { takenBack } from '../said.ts'
import { buttonsOf, textOf } from './fake/shown-text.ts'
import type { FakeMessage } from './fake/world.ts'
import { edited, here, labels, nudge, onNudgeStage } from './nudge-stage.ts'
import { lemonJar } from './reminding.ts'
import { bot, fake, restart } from './stage.ts'

const UNDO = 'Undo'
const TAKEN_BACK = /↩ Undone: the last shake of lemon.* <@\d+>, <t:\d+:f>/

onNudgeStage()

const sorted = (message: FakeMessage) => labels(message).toSorted()

it('says on the nudge that its press was taken back, and asks again, as often as that is done', async () => {
  const message = await nudge()
  const before = buttonsOf(message.json)
  for (const round of [1, 2]) {
    const answer = await fake.press(message, 'Shaken')
    await edited(message, 2 * round - 1)
    expect(textOf(message.json)).toMatch(/✓ .*shaken/i)
    await fake.press(answer.message, UNDO)
    await edited(message, 2 * round)
    expect(textOf(message.json)).not.toContain('✓')
    expect(textOf(message.json)).toMatch(TAKEN_BACK)
    expect(buttonsOf(message.json)).toEqual(before)
  }
})

it('does so a day later and after a restart', async () => {
  const message = await nudge()
  const answer = await fake.press(message, 'Shaken')
  await edited(message, 1)
  await restart()
  bot.pass(24 * 3_600_000)
  await fake.press(answer.message, UNDO)
  await edited(message, 2)
  expect(labels(message)).toContain('Shaken')
  expect(textOf(message.json)).toMatch(TAKEN_BACK)
})

it('leaves what another press has said, and what a form did is taken back too', async () => {
  const ginger = lemonJar(fake, 'ginger', { strainFrom: '2026-11-25', strainBy: '2026-11-29' })
  const message = await nudge([lemonJar(fake), ginger])
  const before = sorted(message)
  const strain = labels(message).find((label) => /strained/i.test(label))!
  const shake = labels(message).find((label) => /shaken/i.test(label))!
  const shaken = await fake.press(message, shake)
  await edited(message, 1)
  const strained = await fake.submit(await fake.press(message, strain), {})
  await edited(message, 2)
  await fake.press(strained.message, UNDO)
  await edited(message, 3)
  expect(textOf(message.json)).toMatch(/✓ .*shaken/i)
  expect(textOf(message.json)).toContain('↩ Undone: ginger isn’t strained after all')
  expect(labels(message)).toContain(strain)
  expect(labels(message)).not.toContain(shake)
  await fake.press(shaken.message, UNDO)
  await edited(message, 4)
  expect(sorted(message)).toEqual(before)
})

it('leaves the nudge where nothing was taken back, it is gone, or cannot be read', async () => {
  const message = await nudge()
  const answer = await fake.press(message, 'Shaken')
  await edited(message, 1)
  await fake.slash('jar taste', { jar: 'lemon', rating: '4' })
  expect((await fake.press(answer.message, UNDO)).text).toContain('Something newer is on record')
  await fake.slash('jar undo', { jar: 'lemon' })
  fake.channel.messages.delete(message.json.id)
  expect((await fake.press(answer.message, UNDO)).text).toContain(takenBack('lemon', 'shaken'))
  expect(message.edits).toBe(1)
})

it('on a reminder of which nothing is kept does all its buttons say, and leaves it as it is', async () => {
  const message = await nudge()
  await bot.store.update(fake.user.id, ({ sentNudges: _, ...before }) => before)
  const before = labels(message)
  const answer = await fake.press(message, 'Shaken')
  expect(answer.text).toContain('Lemon is shaken.')
  expect((await fake.press(answer.message, UNDO)).text).toContain(takenBack('lemon', 'shaken'))
  expect([message.edits, labels(message)]).toEqual([0, before])
})

it('takes back with a button of the version before, which named what to take off', async () => {
  const message = await nudge()
  await fake.press(message, 'Shaken')
  await edited(message, 1)
  const { lines } = await bot.store.update(fake.user.id, (person) => ({
    ...person,
    lines: [{ id: '0123456789ab', line: '{"button":{},"said":"✓ Lemon is shaken.","buttons":[]}' }],
  }))
  const id = (await here.person()).jars[0]!.id
  const customId = `1|${BigInt(fake.user.id).toString(36)}|/jar undo #${id} after:2|k${lines[0]!.id}`
  expect((await fake.press(message, { customId })).text).toContain(takenBack('lemon', 'shaken'))
  await edited(message, 2)
  expect(textOf(message.json)).toMatch(TAKEN_BACK)
})

it('goes on after many presses that were taken back, as far as the message has room', async () => {
  const message = await nudge()
  const before = labels(message)
  for (let edits = 1; edits < 90; edits += 2) {
    bot.pass(60_000)
    const answer = await fake.press(message, 'Shaken')
    await edited(message, edits)
    await fake.press(answer.message, UNDO)
    await edited(message, edits + 1)
  }
  expect(labels(message)).toEqual(before)
}, 60_000)
