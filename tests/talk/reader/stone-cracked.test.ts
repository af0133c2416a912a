import { expect, it } from 'vitest'
import { hear } from '../../../bot/chat/hear/hear.ts'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { isStoneCracked } from '../../../bot/talk/reader/stone-cracked.ts'
import { newAsker } from '../../bot/asker.ts'
import { commands } from '../../bot/test-desk.ts'

/** What is answered of a jar of plums. */
async function told(line: string) {
  const dispatch = { ...newAsker(), talk: newTalkMemory(), commands, log: () => {}, nowMs: Date.UTC(2026, 10, 30) }
  await hear('/jar start name:plums of:1 kg plums spirit:1 l 60%', dispatch)
  return hear(line, dispatch)
}

// Hydrogen cyanide from crushed kernels: the sources of core/trouble, `hazards` and `kernel_study`.
it.each([
  'found a stone in the jar that’s cracked',
  'some of the stones have split open',
  'the pits are cracked',
  'there is a broken stone in the jar',
  'ci sono noccioli rotti nel vaso',
  'I dropped three split peach stones into it last week',
  'my brother added some crushed cherry pits to the jar',
  'we smashed the stones of the damsons and threw them in',
  'I put in a handful of apricot kernels',
  'we smashed some plum stones and they’re all in there already',
  'ho schiacciato due noccioli e sono già dentro',
  'ho messo sei noccioli spaccati nel vaso',
  'ho schiacciato i noccioli e poi li ho messi dentro',
])('takes a stone that is cracked for the kernel, never for glass: %s', async (line) => {
  const { outcome, read } = await told(line)
  expect(isStoneCracked(line)).toBe(true)
  expect(read ?? '').not.toMatch(/glass/)
  if (!outcome.ok || !('reply' in outcome)) throw new Error('not answered of the jar')
  expect(outcome.reply.data).toMatchObject({ discard: { verdict: 'throw_away', because: 'kernels' } })
})

it.each([
  'the jar is cracked',
  'a stone cracked the jar',
  'a stone has cracked the jar',
  'are the stones cracked?',
  'none of the stones are cracked',
  'can I use cracked stones?',
  'I put the plums in without cracked stones',
  'shall I add a few cracked stones to the jar',
  'I added whole plum stones to the jar',
])('leaves alone what cracked otherwise, was asked or denied: %s', (line) => {
  expect(isStoneCracked(line)).toBe(false)
})

it('asks of glass where the jar is cracked', async () => {
  expect((await told('the jar is cracked')).read).toMatch(/glass chipped/)
})
