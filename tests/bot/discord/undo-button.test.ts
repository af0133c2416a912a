import { expect, it } from 'vitest'
import type { Reply } from '../../../bot/chat/reply.ts'
import { replyMessages } from '../../../bot/discord/show/to-messages.ts'
import { en } from '../../../bot/text/en/index.ts'
import { callTyped } from '../call-typed.ts'
import { buttonsOf } from './fake/shown-text.ts'
import type { FakeMessage } from './fake/world.ts'
import { inChannel, keep, lemonJar, messagesIn, reminding } from './reminding.ts'
import { expectValid, labelsOf, messagesOfReply, rendering, speech } from './rendering.ts'
import { bot, fake, onStage, restart } from './stage.ts'

let here: ReturnType<typeof reminding>

onStage((discord) => {
  here = reminding(discord)
  return { store: here.store }
})

const DAY_MS = 24 * 3_600_000
const UNDO = 'Undo'
const SHOW = en.discord.showEverybody()

const kindsOf = async () => (await bot.store.read(fake.user.id)).jars[0]!.entries.map(({ kind }) => kind)
const labels = (message: FakeMessage | undefined) => buttonsOf(message!.json).map(({ label }) => label)

const nudged = async (): Promise<FakeMessage> => {
  await keep(here.store, fake, { jars: [lemonJar(fake)], settings: inChannel(fake.channel) })
  await here.tick()
  return messagesIn(fake.channel)[0]!
}

it('stands under what a press on a reminder says, and takes that back a day later and after a restart', async () => {
  const answer = await fake.press(await nudged(), 'Shaken')
  expect(labels(answer.message)).toEqual([UNDO, SHOW])
  await restart()
  bot.pass(DAY_MS)
  const undone = await fake.press(answer.message, UNDO)
  expect(undone).toMatchObject({ isPrivate: true })
  expect(undone.text).toMatch(/Undone: the last shake of lemon on <t:\d+:D>/)
  expect(labels(undone.message)).not.toContain(UNDO)
  expect(await kindsOf()).toEqual(['started', 'shaken', 'undone'])
  bot.pass(DAY_MS)
  expect((await fake.press(answer.message, UNDO)).text).toContain('already undone')
  expect(await kindsOf()).toHaveLength(3)
})

it('takes back nothing once another entry was made', async () => {
  const answer = await fake.press(await nudged(), 'Shaken')
  await fake.slash('jar taste', { jar: 'lemon', rating: '4' })
  expect((await fake.press(answer.message, UNDO)).text).toContain('Something newer is on record')
  expect(await kindsOf()).toEqual(['started', 'shaken', 'tasted'])
})

it('is for its owner alone', async () => {
  const message = await nudged()
  const answer = await fake.press(message, 'Shaken')
  const { customId } = buttonsOf(answer.message!.json).find(({ label }) => label === UNDO)!
  const sorrel = fake.newUser('sorrel')
  const pressed = await fake.press(message, { customId: customId! }, { user: sorrel })
  expect(pressed.text).toBe(en.calls.notYours())
  expect(await kindsOf()).toEqual(['started', 'shaken'])
})

const undo = (line: string) =>
  ({
    label: { group: 'actions', key: 'jar_undo', values: undefined },
    call: callTyped(line),
    isButtonOnly: true,
  }) as const

const replyWith = (actions: Reply['actions']): Reply => ({
  headline: { group: 'headlines', key: 'jars_none', values: undefined },
  table: [],
  sure: [],
  notes: [],
  cautions: [],
  actions,
  data: {},
  kitchen: 'metric',
})

it('is never the main button, and left out where it has none', async () => {
  const [message] = await messagesOfReply(replyWith([undo('/jar undo #k7f2a after:5')]))
  expectValid([message!])
  expect(JSON.stringify(message)).not.toContain('"style":1')
  const [none] = replyMessages(null, replyWith([undo('/jar undo #k7f2a after:5')]), rendering(), speech)
  expect(labelsOf(none!)).toEqual([SHOW])
  expect(JSON.stringify(none)).not.toContain('/jar undo')
})

it('fits for more jars than a button has room for', async () => {
  const ids = Array.from({ length: 30 }, (_, index) => `#k7f${String(index).padStart(2, '0')}`).join(' ')
  const numbers = Array.from({ length: 30 }, () => '1000').join(' ')
  const [message] = await messagesOfReply(replyWith([undo(`/jar undo ${ids} after:${numbers}`)]))
  expectValid([message!])
  expect(labelsOf(message!)).toEqual([UNDO, SHOW])
})
