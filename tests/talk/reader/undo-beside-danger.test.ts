import { expect, it } from 'vitest'
import { hear } from '../../../bot/chat/hear/hear.ts'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../../bot/asker.ts'
import { commands } from '../../bot/test-desk.ts'
import { talkerFor } from './told.ts'

const PLUM = '/jar start plum of:500 g plums spirit:1 l vodka 40%'

// Sentences: common sense, no source.
it.each([
  'gone slimy, undo it',
  'it’s gone mouldy, undo that',
  'undo it, there is mould on it',
  'ha fatto la muffa, annulla',
  'smells of rot, undo that',
  'the plum stinks of a pond, take that back',
  'strained it, gone slimy, undo it',
  'sweetened the plum, mouldy now, undo',
  'ho filtrato il plum, puzza di marcio, annulla',
])('takes nothing back where something is wrong with the jar: %s', async (line) => {
  const one = await talkerFor({ after: null, shelf: undefined })
  await one.say(PLUM)
  expect(await one.say(line)).toMatchObject({ command: 'trouble', erased: false })
  expect((await one.say('/jar show plum')).code).toBeNull()
})

it('writes nothing down of several jars, nor takes anything back', async () => {
  const one = await talkerFor({ after: null, shelf: undefined })
  await one.say(PLUM)
  await one.say('/jar start quince of:500 g quince spirit:1 l vodka 40%')
  for (const line of ['strained it, gone slimy, undo it', 'shook it, smells of sewage, undo that']) {
    expect(await one.say(line), line).toMatchObject({ command: 'trouble', erased: false, also: [] })
  }
  for (const jar of ['plum', 'quince']) {
    const { outcome } = await one.hear(`/jar show ${jar}`)
    expect('reply' in outcome && (outcome.reply.data.events as readonly unknown[]).length, jar).toBe(1)
  }
})

it.each([
  ['the quince smells of rot', 'throw_away'],
  ['it reeks of carrion', 'throw_away'],
  ['puzza di palude', 'throw_away'],
  ['it smells of rotten eggs', 'ask'],
  ['does it smell of rot?', 'ask'],
])('takes the smell of rot for what goes, as core/trouble has it: %s', async (line, verdict) => {
  const one = await talkerFor({ after: null, shelf: undefined })
  await one.say('/jar start quince of:500 g quince spirit:1 l vodka 40%')
  const { outcome } = await one.hear(line)
  expect('reply' in outcome ? outcome.reply.data.discard : null).toMatchObject({ verdict })
})

it('takes back what was written down where only that is said', async () => {
  const one = await talkerFor({ after: null, shelf: undefined })
  await one.say(PLUM)
  expect((await one.say('undo it')).command).toBe('jar undo')
})

it('names what is a danger among the last steps of several jars', async () => {
  const asker = newAsker()
  const inNewTalk = () => ({ ...asker, talk: newTalkMemory(), commands, log: () => {}, nowMs: Date.UTC(2026, 10, 30) })
  for (const line of [
    PLUM,
    '/jar start ginger of:100 g ginger spirit:1 l vodka 40%',
    '/trouble mould jar:plum yes:growth',
  ])
    await hear(line, inNewTalk())
  const { outcome } = await hear('undo it', inNewTalk())
  expect(outcome).toMatchObject({
    ok: false,
    error: { problem: 'talk_undo_jar', values: { told: [{ jar: 'plum', told: 'mould' }] } },
  })
})
