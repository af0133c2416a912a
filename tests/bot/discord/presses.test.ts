import { expect, it } from 'vitest'
import type { Command } from '../../../bot/chat/command.ts'
import { en } from '../../../bot/text/en/index.ts'
import { commands } from '../test-desk.ts'
import type { Answer } from './fake/answer.ts'
import { buttonsOf } from './fake/shown-text.ts'
import type { FakeMessage } from './fake/world.ts'
import { speech } from './rendering.ts'
import { bot, fake, onStage, restart } from './stage.ts'

onStage()

const DAY_MS = 24 * 3_600_000
const SHOW = en.discord.showEverybody()
const LEMON = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%', 'to-sweetness': '250 g/L' }

const person = () => bot.store.read(fake.user.id)
const jarOf = async (at = 0) => (await person()).jars[at]!
const kindsOf = async () => (await jarOf()).entries.map(({ kind }) => kind)

const plan = () =>
  fake.slash('plan', { of: '8 lemons', spirit: '0.7 l 95%', 'to-strength': '30%', 'to-sweetness': '250 g/L' })

const labels = (message: FakeMessage | undefined) => buttonsOf(message!.json).map(({ label }) => label)
const START = en.sentences.actions.start_jar()

/** The id of a button that runs a line, as an answer of any age carries it. */
const custom = (line: string, owner = fake.user.id) => ({ customId: `1|${BigInt(owner).toString(36)}|${line}` })

it('answers a press with what its line says, in private', async () => {
  const planned = await plan()
  const started = await fake.press(planned.message, START)
  expect(started).toMatchObject({ isPrivate: true, wasDeferred: false })
  expect(started.text).toContain('Started.')
  expect((await person()).jars).toHaveLength(1)
  // What was asked stays as it was.
  expect(planned.message!.json.id).not.toBe(started.message!.json.id)
})

it('shows an answer to everybody, without its buttons', async () => {
  const planned = await plan()
  const shown = await fake.press(planned.message, SHOW)
  expect(shown.isPrivate).toBe(false)
  expect(shown.text).toBe(planned.text)
  expect(labels(shown.message)).toEqual([])
  const sent = shown.callback!.data as { allowed_mentions: unknown }
  expect(sent.allowed_mentions).toEqual({ parse: [] })
})

it('lets nobody press what was made for somebody else', async () => {
  await fake.slash('jar start', LEMON)
  const { id } = await jarOf()
  const sorrel = fake.newUser('sorrel')
  const shown = await fake.press((await plan()).message, SHOW)
  for (const line of [`/jar discard #${id}`, `/jar discard #${id}`, '!show']) {
    const answer = await fake.press(shown.message, custom(line), { user: sorrel })
    expect(answer).toMatchObject({ text: en.calls.notYours(), isPrivate: true })
  }
  // Naming themselves the owner gives them their own jars, of which there are none.
  const own = await fake.press(shown.message, custom(`/jar discard #${id}`, sorrel.id), { user: sorrel })
  expect(own.text).toBe(speech.words.problem('no_jars', {}, 'metric'))
  expect(await kindsOf()).toEqual(['started'])
})

it('asks for a tasting in a form, from a button and from a command, and records what was filled in', async () => {
  await fake.slash('jar start', LEMON)
  const { id } = await jarOf()
  const source = (await plan()).message
  const pressed = await fake.press(source, custom(`/jar taste #${id}`))
  expect(pressed.modal).toMatchObject({ title: en.tastingForm.title({ name: 'lemon' }) })
  const noted = await fake.submit(pressed, { rating: '4', note: 'bright,\nstill sharp @everyone' })
  expect(noted).toMatchObject({ isPrivate: true })
  expect(noted.text).not.toMatch(/(?<!\\)@everyone/)
  const asked = await fake.slash('jar taste', { jar: 'lem' })
  expect(asked.modal).toBeDefined()
  bot.pass(DAY_MS)
  await fake.submit(asked, { note: 'rounder' })
  const { entries } = await jarOf()
  expect(entries).toMatchObject([
    { kind: 'started' },
    { kind: 'tasted', rating: 4, note: 'bright,\nstill sharp @everyone' },
    { kind: 'tasted', rating: null, note: 'rounder' },
  ])
  const empty = await fake.submit(await fake.slash('jar taste', { jar: `#${id}` }), {})
  expect(empty.text).toContain('rating:')
  const stranger = fake.newUser('sorrel')
  expect((await fake.submit(asked, { note: 'mine' }, { user: stranger })).text).toBe(en.calls.notYours())
  expect((await fake.slash('jar taste', { jar: 'walnut' })).text).toContain('walnut')
})

it('works after a restart, a day later and after a rename', async () => {
  await fake.slash('jar start', LEMON)
  const { id } = await jarOf()
  const { message } = await fake.slash('jar show', { jar: 'lemon' })
  await restart()
  bot.pass(DAY_MS)
  await fake.slash('jar rename', { jar: 'lemon', to: 'midwinter lemon' })
  const shaken = await fake.press(message, custom(`/jar shake #${id}`))
  expect(shaken.text).toContain('Midwinter lemon')
  expect(await kindsOf()).toContain('shaken')
  expect((await fake.press(message, SHOW)).isPrivate).toBe(false)
})

it('runs a line that is kept after a restart too, and says when it is kept no longer', async () => {
  const long = { of: '8 lemons + 30 g ginger + 2 sticks cinnamon, ceylon', spirit: '0.7 l 95%' }
  const planned = await fake.slash('plan', { ...long, 'to-strength': '30%', 'to-sweetness': '250 g/L' })
  const kept = buttonsOf(planned.message!.json).find(({ customId }) => customId?.includes('|@'))!
  expect(kept).toBeDefined()
  await restart()
  const answer = await fake.press(planned.message, kept.label)
  expect(answer.text).toContain('Started.')
  await bot.store.update(fake.user.id, (before) => ({ ...before, lines: [] }))
  bot.pass(DAY_MS)
  const gone = await fake.press(planned.message, kept.label)
  expect(gone).toMatchObject({ isPrivate: true })
  expect(gone.text).toBe(en.discord.tooOld({ path: 'jar start' }))
})

it('says in a sentence what a button can no longer do', async () => {
  await fake.slash('jar start', LEMON)
  const { id } = await jarOf()
  const { message } = await fake.slash('jar show', { jar: 'lemon' })
  await fake.slash('jar strain', { jar: 'lemon', measured: '920 ml', strength: '78%' })
  bot.pass(DAY_MS)
  const late = await fake.press(message, custom(`/jar shake #${id}`))
  expect(late.text).toContain('strained')
  expect((await fake.press(message, custom('/jar shake #zzzzz'))).text).toContain('zzzzz')
  expect((await fake.press(message, custom('/jar wobble #k7f2a'))).text).toContain('jar wobble')
  for (const customId of ['', '1|x', '2|abc|/help', `1|${'z'.repeat(90)}|/help`, 'random', '1|!|!']) {
    const answer = await fake.press(message, { customId })
    expect(answer).toMatchObject({ text: en.calls.unknownButton(), isPrivate: true })
  }
  expect((await fake.press(message, custom('!future'))).text).toBe(en.calls.unknownButton())
})

it('does once what is pressed twice in a row', async () => {
  const planned = await plan()
  const answers = await Promise.all([fake.press(planned.message, START), fake.press(planned.message, START)])
  expect(answers.filter(({ text }) => text === en.calls.twice())).toHaveLength(1)
  expect((await person()).jars).toHaveLength(1)
  expect((await fake.press(planned.message, START)).text).toBe(en.calls.twice())
  bot.pass(5000)
  expect((await fake.press(planned.message, START)).text).not.toBe(en.calls.twice())
})

it('answers two people at once, and one person’s slow command holds nobody up', async () => {
  let release = (): void => undefined
  const released = new Promise<void>((resolve) => {
    release = resolve
  })
  const slow = commands.map((command) =>
    command.path === 'blend'
      ? ({ ...command, run: () => released.then(() => Promise.reject(new Error('secret'))) } as Command)
      : command,
  )
  await restart({ commands: slow })
  const sorrel = fake.newUser('sorrel')
  const waiting = fake.slash('blend', { parts: '600 ml 47% + 300 ml 33%' })
  const others = await Promise.all([fake.user, sorrel].map((user) => fake.slash('jar start', LEMON, { user })))
  for (const { text } of others) expect(text).toContain('started')
  release()
  const failed: Answer = await waiting
  expect(failed.text).toBe(en.problems.internal())
  expect(bot.logged.splice(0).join('\n')).not.toContain('secret')
})

it('erases what was named when it was offered, and asks again where there is more by then', async () => {
  await fake.slash('jar start', LEMON)
  const asked = await fake.slash('forget')
  const ERASE = en.sentences.actions.forget_all()
  expect(labels(asked.message)).toEqual([ERASE])
  await fake.slash('jar shake', { jar: 'lemon' })
  bot.pass(DAY_MS)
  const again = await fake.press(asked.message, ERASE)
  expect(again.text).toContain('1 jar with 2 entries')
  expect(again.text).toContain('nothing was deleted')
  expect(await kindsOf()).toEqual(['started', 'shaken'])
  expect((await fake.press(again.message, ERASE)).text).toContain('Deleted: 1 jar with 2 entries')
  expect((await person()).jars).toEqual([])
})

it('takes thirty commands a minute from each person', async () => {
  const send = (user = fake.user) => fake.slash('help', {}, { user })
  await Promise.all(Array.from({ length: 30 }, () => send()))
  const paused = await send()
  expect(paused).toMatchObject({ text: en.calls.tooFast({ seconds: 60 }), isPrivate: true })
  expect((await send(fake.newUser('sorrel'))).text).toContain('/plan')
  bot.pass(60_000)
  expect((await send()).text).toContain('/plan')
})
