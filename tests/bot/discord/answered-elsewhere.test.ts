import { expect, it } from 'vitest'
import { textOf } from './fake/shown-text.ts'
import { edited, here, labels, nudge, onNudgeStage } from './nudge-stage.ts'
import { lemonJar, messagesIn, record } from './reminding.ts'
import { bot, fake, restart } from './stage.ts'

onNudgeStage()

const ripe = () => lemonJar(fake, 'lemon', { strainFrom: '2026-11-25', strainBy: '2026-11-29' })

const KEPT = ['Show jar', 'Reminders…']

it('loses what a slash command has answered, and says so', async () => {
  const message = await nudge([ripe()])
  await fake.slash('jar shake', { jar: 'lemon' })
  await edited(message)
  expect(labels(message)).toEqual(['Strained', 'Later today', 'Tomorrow', ...KEPT])
  expect(textOf(message.json)).toContain('✓ Lemon is shaken.')
})

it('asks for no shaking of what was strained, and for nothing of what is gone', async () => {
  const message = await nudge([ripe()])
  await fake.slash('jar strain', { jar: 'lemon', measured: '920 ml' })
  await edited(message)
  expect(labels(message)).toEqual(KEPT)
})

it('says no amount of what was typed elsewhere, where others may read along', async () => {
  const message = await nudge([ripe()])
  await fake.slash('jar strain', { jar: 'lemon', measured: '920 ml', strength: '87%' })
  await edited(message)
  expect(textOf(message.json)).toContain('✓ Lemon is strained.')
  expect(textOf(message.json)).not.toMatch(/920|87/)
})

it('of a jar that was thrown away holds nothing that is asked of it', async () => {
  const message = await nudge([ripe(), lemonJar(fake, 'ginger')])
  await fake.slash('jar discard', { jar: 'lemon' })
  await edited(message)
  expect(labels(message)).not.toContain('lemon strained')
  expect(labels(message)).toContain('ginger shaken')
})

it('of several jars keeps asking the others, until all are done', async () => {
  const message = await nudge([lemonJar(fake), lemonJar(fake, 'ginger')])
  expect(labels(message)).toContain('All shaken')
  await fake.slash('jar shake', { jar: 'lemon' })
  await edited(message)
  expect(labels(message)).toEqual(['ginger shaken', 'Later today', 'Tomorrow', 'Show jars', 'Reminders…'])
  await fake.slash('jar shake', { jar: 'all' })
  await edited(message, 2)
  expect(labels(message)).toEqual(['Show jars', 'Reminders…'])
})

it('is drawn from what is kept, also after a restart: with what nobody pressed, renamed jars and those put off', async () => {
  const message = await nudge([lemonJar(fake), lemonJar(fake, 'peach'), lemonJar(fake, 'basil')])
  await restart()
  await record(here.store, fake, 'lemon', { kind: 'renamed', name: 'sun' })
  await record(here.store, fake, 'peach', { kind: 'discarded' })
  bot.pass(1000)
  await fake.slash('jar later', { jar: 'all', until: 'tomorrow' })
  await edited(message)
  expect(labels(message)).toEqual(['All shaken', 'Show jars', 'Reminders…'])
  expect(textOf(message.json)).toMatch(
    /Shake lemon, peach and basil.*✓ Peach is thrown away.*✓ I’ll remind you about sun and basil again from /s,
  )
  await fake.slash('jar undo', { jar: 'basil' })
  await edited(message, 2)
  expect(labels(message)).toEqual(['All shaken', 'Later today', 'Tomorrow', 'Show jars', 'Reminders…'])
  expect(textOf(message.json)).toMatch(/✓ I’ll remind you about sun again from .*↩ Undone: reminders for basil/s)
})

it('has room for whatever answers it', async () => {
  const long = (index: number) => `quin${index} ${'and sloe gin '.repeat(3)}`.slice(0, 40).trim()
  const jars = [0, 1, 2, 3, 4, 5, 6, 7, 8].map((index) =>
    lemonJar(fake, long(index), { strainFrom: '2026-11-25', strainBy: '2026-11-29' }),
  )
  const message = await nudge(jars)
  for (const [index] of jars.entries()) {
    await fake.slash('jar later', { jar: long(index), until: 'tomorrow' })
    await edited(message, 2 * index + 1)
    await fake.slash('jar taste', { jar: long(index), rating: '4', note: 'bright' })
    await fake.slash('jar strain', { jar: long(index), measured: '920 ml', strength: '40%' })
    await edited(message, 2 * index + 2)
  }
  expect(textOf(message.json).match(/✓/g)).toHaveLength(8)
})

it('is answered by a button of another message, which says it for itself', async () => {
  const first = await nudge([ripe()])
  await here.later(24 * 60)
  bot.pass(24 * 60 * 60_000)
  const second = messagesIn(fake.channel).at(-1)!
  expect(second).not.toBe(first)
  await fake.press(second, 'Shaken')
  await edited(first)
  await edited(second)
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
