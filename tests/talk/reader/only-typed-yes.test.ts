import { expect, it } from 'vitest'
import { hear } from '../../../bot/chat/hear/hear.ts'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../../bot/asker.ts'
import { commands } from '../../bot/test-desk.ts'

/** What is answered last of lines said one after the other, and how many jars there are then. */
async function lastOf(lines: readonly string[]) {
  const asker = newAsker()
  const dispatch = { ...asker, talk: newTalkMemory(), commands, log: () => {}, nowMs: Date.UTC(2026, 10, 30) }
  let last = await hear('/jar start name:lemon of:10 lemons spirit:1 l 95%', dispatch)
  for (const line of lines) last = await hear(line, dispatch)
  return { ...last, jars: (await asker.store.read('local')).jars.filter(({ entries }) => entries.length === 1).length }
}

it.each([
  [['/cost spirit:20 EUR', 'forget everything about me', 'yes'], '/forget confirm:yes'],
  [['forget everything about me', 'yes', 'yes please'], '/forget confirm:yes'],
  [['forget everything about me', 'sì'], '/forget confirm:yes'],
  [['/forget', 'yes'], '/forget confirm:yes'],
  [['I want to throw away the lemon', 'yes'], '/jar discard lemon'],
])('says the line that does it once more, and does nothing by a yes: %j', async (lines, line) => {
  const { outcome, read, jars } = await lastOf(lines)
  expect(outcome).toMatchObject({ ok: false, error: { problem: 'talk_only_typed' } })
  expect(read).toBe(line)
  expect(jars).toBe(1)
})

it('lets a yes be of what was answered since', async () => {
  const { outcome } = await lastOf(['forget everything about me', '10 lemons and a litre of 95%', 'yes'])
  expect(outcome).not.toMatchObject({ error: { problem: 'talk_only_typed' } })
})
