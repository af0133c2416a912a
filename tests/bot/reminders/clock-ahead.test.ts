import { expect, it } from 'vitest'
import { tick } from '../../../bot/reminders/tick.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import type { Person } from '../../../store/person.ts'
import type { Store } from '../../../store/store.ts'
import { inFolder } from '../../store/in-folder.ts'
import { storeIn } from '../../store/some-store.ts'
import { testDesk } from '../test-desk.ts'
import { inbox } from './inbox.ts'
import { at, DAY_MS, jarOf, personWith, ZONE } from './people.ts'

const START_MS = at('2026-12-01', '18:00')
const AHEAD_MS = 400 * DAY_MS

/** Whoever shook, tasted or put off when the clock was 400 days ahead, with a clock that is right again. */
const quietAhead = async (line: string, store: Store): Promise<Person> => {
  await store.update('local', () => personWith([jarOf({ name: 'lemon', startedMs: START_MS })]))
  const asker = { userId: 'local', place: { kind: 'console' }, assumedZone: ZONE, store } as const
  const said = await testDesk({ asker, nowMs: START_MS + 3_600_000 + AHEAD_MS }).jsonOf(line)
  expect(said.error).toBeUndefined()
  return store.read('local')
}

/** Days on which something is said, of the ten after the start. */
const saidOn = async (store: Store): Promise<readonly number[]> => {
  const { box, surface } = inbox()
  const days: number[] = []
  for (let day = 1; day <= 10; day++) {
    const before = box.received.length
    const nowMs = at('2026-12-01', '09:01') + day * DAY_MS
    await tick({ store, surface, nowMs, assumedZone: ZONE, log: expect.fail })
    if (box.received.length > before) {
      days.push(day)
      expect(box.received.at(-1)!.text).toMatch(/^Shake lemon/)
    }
  }
  return days
}

it.each(['/jar shake lemon', '/jar taste lemon rating:4', '/jar later lemon until:in 2 weeks'])(
  '%s dated ahead keeps nothing quiet once the clock is right',
  async (line) => {
    const store = memoryStore(ZONE)
    expect((await quietAhead(line, store)).jars[0]!.entries).toHaveLength(2)
    expect(await saidOn(store)).toEqual([1, 2, 3, 4, 5, 6, 7])
  },
)

it('keeps quiet for what was said on its day', async () => {
  const store = memoryStore(ZONE)
  await store.update('local', () => personWith([jarOf({ name: 'lemon', startedMs: START_MS })]))
  const asker = { userId: 'local', place: { kind: 'console' }, assumedZone: ZONE, store } as const
  await testDesk({ asker, nowMs: START_MS + 3_600_000 }).jsonOf('/jar later lemon until:in 5 days')
  expect((await saidOn(store))[0]).toBe(5)
})

it('is found by the index of the folder when the clock is set back while the bot runs', () =>
  inFolder(async (folder) => {
    let nowMs = START_MS + AHEAD_MS
    const store = storeIn(folder, { nowMs: () => nowMs })
    await store.claimDue(nowMs, 9, 1)
    await quietAhead('/jar shake lemon', store)
    await store.claimDue(nowMs + 3_600_000, 9, 1)
    nowMs = START_MS
    expect(await store.claimDue(nowMs, 9, 1)).toEqual([])
    nowMs = START_MS + DAY_MS
    expect(await store.claimDue(nowMs, 9, 1)).toEqual(['local'])
    await store.close()
  }))

it('says on its day what it said a year ahead of it', async () => {
  const store = memoryStore(ZONE)
  await store.update('local', () => personWith([jarOf({ name: 'lemon', startedMs: START_MS })]))
  const { box, surface } = inbox()
  const round = { store, surface, assumedZone: ZONE, log: expect.fail }
  await tick({ ...round, nowMs: START_MS + AHEAD_MS })
  expect(box.received).toHaveLength(1)
  expect(await saidOn(store)).toEqual([1, 2, 3, 4, 5, 6, 7])
})
