import { beforeEach, expect, it } from 'vitest'
import type { Jar } from '../../../store/person.ts'
import { buttonsOf, textOf } from './fake/shown-text.ts'
import type { FakeMessage } from './fake/world.ts'
import { inChannel, keep, lemonJar, messagesIn, reminding, wait } from './reminding.ts'
import { bot, fake, onStage, restart } from './stage.ts'

onStage()

let here: ReturnType<typeof reminding>

beforeEach(async () => {
  here = reminding(fake, { store: bot.store as never })
  await restart({ sent: here.sent })
})

const ripe = () => lemonJar(fake, 'lemon', { strainFrom: '2026-11-25', strainBy: '2026-11-29' })

const nudge = async (jars: readonly Jar[]): Promise<FakeMessage> => {
  await keep(here.store, fake, { jars, settings: inChannel(fake.channel) })
  await here.tick()
  return messagesIn(fake.channel).at(-1)!
}

const labels = ({ json }: FakeMessage) => buttonsOf(json).map(({ label }) => label)
const KEPT = ['Show jar', 'Reminders…']
const edited = (message: FakeMessage) => wait(() => message.edits === 1)

it('loses what a slash command has answered, and says so', async () => {
  const message = await nudge([ripe()])
  await fake.slash('jar shake', { jar: 'lemon' })
  await edited(message)
  expect(labels(message)).toEqual(['Strained', 'Later today', 'Tomorrow', ...KEPT])
  expect(textOf(message.json)).toContain('✓ lemon: shaken.')
})

it('asks for no shaking of what was strained, and for nothing of what is gone', async () => {
  const message = await nudge([ripe()])
  await fake.slash('jar strain', { jar: 'lemon', measured: '920 ml' })
  await edited(message)
  expect(labels(message)).toEqual(KEPT)
})

it('of a jar that was thrown away holds nothing that is asked of it', async () => {
  const message = await nudge([ripe(), lemonJar(fake, 'ginger')])
  await fake.slash('jar discard', { jar: 'lemon' })
  await edited(message)
  expect(labels(message)).not.toContain('lemon strained')
  expect(labels(message)).toContain('All shaken')
})

it('of several jars keeps what is asked of all until all are done', async () => {
  const message = await nudge([lemonJar(fake), lemonJar(fake, 'ginger')])
  await fake.slash('jar shake', { jar: 'lemon' })
  await fake.slash('jar list')
  expect([message.edits, labels(message).includes('All shaken')]).toEqual([0, true])
  await fake.slash('jar shake', { jar: 'all' })
  await edited(message)
  expect(labels(message)).toEqual(['Show jars', 'Reminders…'])
})

it('is answered by a button of another message, which says it for itself', async () => {
  const first = await nudge([ripe()])
  await here.later(24 * 60)
  bot.pass(24 * 60 * 60_000)
  const second = messagesIn(fake.channel).at(-1)!
  expect(second).not.toBe(first)
  await fake.press(second, 'Shaken')
  await edited(first)
  expect([first, second].map((each) => [each.edits, labels(each).includes('Shaken')])).toEqual([
    [1, false],
    [1, false],
  ])
})

it('stays as it is where nothing was recorded', async () => {
  const message = await nudge([ripe()])
  await fake.slash('jar show', { jar: 'lemon' })
  await fake.slash('jar taste', { jar: 'lemon', rating: '4' })
  await fake.slash('jar sweeten', { jar: 'lemon', sugar: 'a lot' })
  await fake.slash('jar list')
  expect(message.edits).toBe(0)
})
