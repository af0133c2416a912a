import { expect, it } from 'vitest'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import type { Store } from '../../../store/store.ts'
import { type Received, world } from './inbox.ts'
import { at, DAY_MS, jarOf, MINUTE_MS, personWith, ZONE } from './people.ts'

const STARTED = at('2026-12-01', '18:00')
const lemon = jarOf({ name: 'lemon', startedMs: STARTED })
const ginger = jarOf({ name: 'ginger', startedMs: STARTED, plan: { strainFrom: '2026-12-02', strainBy: '2026-12-20' } })
const MORNING = at('2026-12-02')
const PEOPLE = ['12345678901234567', '12345678901234568']

class Killed extends Error {}

/** What happens to a call that the process does not survive: it was not made, or it was made and nobody heard of it. */
type When = 'before' | 'after'

/** The store and the surface of a process that dies at its k-th call of either; from then on nothing works. */
const dyingAt = (k: number, when: When) => {
  let calls = 0
  const step = async <Result>(work: () => Promise<Result>): Promise<Result> => {
    calls++
    if (calls > k || (calls === k && when === 'before')) throw new Killed()
    const result = await work()
    if (calls === k) throw new Killed()
    return result
  }
  const storeOf = (store: Store): Store => ({
    ...store,
    read: (userId) => step(() => store.read(userId)),
    update: (userId, change) => step(() => store.update(userId, change)),
    claimDue: (...claim) => step(() => store.claimDue(...claim)),
  })
  return { storeOf, step, isOver: () => calls < k }
}

const seenBy = (received: readonly Received[], userId: string) =>
  received
    .filter((each) => each.userId === userId)
    .flatMap(({ reply }) =>
      (reply.data.duties as { jar: string; duty: string; day: string }[]).map((duty) => JSON.stringify(duty)),
    )

/** Ticks until the process dies at call k, starts anew after a downtime, and ticks on through the day. */
const dayWithCrash = async (k: number, when: When, downMs: number) => {
  const kept = memoryStore(ZONE)
  const people = Object.fromEntries(PEOPLE.map((id) => [id, personWith([lemon, ginger])]))
  const here = await world({ people, store: kept })
  here.box.found = (id) => (here.box.received.some(({ nudgeId }) => nudgeId === id) ? 'there' : 'absent')
  const { storeOf, step, isOver } = dyingAt(k, when)
  const { send, findSent } = here.surface
  const dying = {
    ...here.surface,
    send: (...delivery: Parameters<typeof send>) => step(() => send(...delivery)),
    findSent: (...sought: Parameters<NonNullable<typeof findSent>>) => step(() => findSent!(...sought)),
  }
  let nowMs = MORNING - MINUTE_MS
  const { tick } = await import('../../../bot/reminders/tick.ts')
  for (; nowMs < MORNING + 10 * MINUTE_MS && isOver(); nowMs += MINUTE_MS) {
    await tick({ ...here.round(nowMs), store: storeOf(kept), surface: dying }).catch(() => {})
  }
  const isDead = !isOver()
  // Leases are gone with the process; the people are what was written.
  const again = memoryStore(ZONE)
  for (const userId of PEOPLE) {
    const person = await kept.read(userId)
    await again.update(userId, () => person)
  }
  nowMs += downMs
  for (const end = nowMs + 15 * MINUTE_MS; nowMs < end; nowMs += MINUTE_MS)
    await tick({ ...here.round(nowMs), store: again })
  return { received: here.box.received, again, isDead }
}

it.each<[When, number]>([
  ['before', 0],
  ['after', 0],
  ['before', 3 * 60 * MINUTE_MS],
  ['after', 3 * 60 * MINUTE_MS],
])(
  'says every reminder exactly once, whichever call is the last (dying %s it, down for %i ms)',
  async (when, downMs) => {
    let k = 1
    for (; ; k++) {
      const { received, again, isDead } = await dayWithCrash(k, when, downMs)
      for (const userId of PEOPLE) {
        const seen = seenBy(received, userId)
        expect(new Set(seen).size, `twice after call ${k}`).toBe(seen.length)
        expect(seen.length, `lost after call ${k}`).toBe(3)
        const { jars, nudges } = await again.read(userId)
        expect(nudges).toEqual([])
        expect(jars.map(({ told }) => [...told].sort())).toEqual([
          ['shake.2026-12-02'],
          ['shake.2026-12-02', 'strain.2026-12-02'],
        ])
      }
      if (!isDead) break
    }
    // read, intent, send, sent for each of two people, and looking for them every minute.
    expect(k).toBeGreaterThan(12)
  },
)

it('says what was missed once when it is down for days', async () => {
  const { received } = await dayWithCrash(5, 'before', 3 * DAY_MS)
  for (const userId of PEOPLE) {
    const mine = received.filter((each) => each.userId === userId)
    expect(mine.length).toBeLessThanOrEqual(2)
    expect(mine.at(-1)?.text).toMatch(/^Shake lemon and ginger\./)
  }
})
