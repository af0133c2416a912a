import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { allDuties } from '../../../core/jar/tasks/duties.ts'
import { dutySettings } from '../../../store/due.ts'
import { NOBODY, type Person } from '../../../store/person.ts'
import { runs, SEED } from '../../runs.ts'
import { world } from './inbox.ts'
import { at, DAY_MS, jarOf, MINUTE_MS, personWith, ZONE } from './people.ts'

const HOUR_MS = 60 * MINUTE_MS
const START_MS = at('2026-01-01', '18:00')
const DAYS = 365

/** Three jars of a year, none of them ever answered. */
const somebody: Person = personWith([
  jarOf({
    name: 'winter',
    startedMs: START_MS,
    plan: { tasteFrom: '2026-01-10', strainFrom: '2026-01-20', strainBy: '2026-02-05' },
  }),
  jarOf({
    name: 'basil',
    startedMs: at('2026-05-01'),
    plan: { tasteFrom: '2026-05-02', strainFrom: '2026-05-04', strainBy: '2026-05-08' },
  }),
  jarOf({
    name: 'walnut',
    startedMs: at('2026-06-24'),
    plan: { tasteFrom: '2026-08-20', strainFrom: '2026-10-01', strainBy: '2026-11-20' },
  }),
])

const wanted = somebody.jars.flatMap(({ id, entries }) =>
  allDuties(entries, dutySettings(NOBODY.settings, ZONE)).map(({ key, dueMs }) => ({ of: `${id} ${key}`, dueMs })),
)

interface Said {
  readonly of: string
  readonly trueMs: number
  readonly clockMs: number
}

/** What is said in a year to whoever looks at every instant of a clock, which shows `clockAt` of the true time. */
async function yearOf(clockAt: (trueMs: number) => number, everyMs: number): Promise<readonly Said[]> {
  const here = await world({ people: { local: somebody } })
  const said: Said[] = []
  for (let trueMs = START_MS; trueMs < START_MS + DAYS * DAY_MS; trueMs += everyMs) {
    const clockMs = clockAt(trueMs)
    const before = new Map((await here.person()).jars.map((jar) => [jar.id, jar]))
    await here.tick(clockMs)
    for (const { id, told, toldMs = [] } of (await here.person()).jars) {
      const known = before.get(id)!
      const saidMs = new Map(known.told.map((key, index) => [key, known.toldMs?.[index]]))
      for (const [index, key] of told.entries()) {
        if (!saidMs.has(key) || saidMs.get(key) !== toldMs[index]) said.push({ of: `${id} ${key}`, trueMs, clockMs })
      }
    }
  }
  expect(here.logged).toEqual([])
  return said
}

const times = (said: readonly Said[]): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>()
  for (const { of } of said) counts.set(of, (counts.get(of) ?? 0) + 1)
  return counts
}

/** Every reminder once, none before its time by the clock, none lost. A missed taste may lapse. */
const expectOnce = (said: readonly Said[]): void => {
  expect(wanted.length).toBeGreaterThan(30)
  const counts = times(said)
  expect([...counts].filter(([, count]) => count !== 1)).toEqual([])
  expect(wanted.filter(({ of }) => !counts.has(of) && !of.includes(' taste.'))).toEqual([])
  const dueMs = new Map(wanted.map((each) => [each.of, each.dueMs]))
  // What is missed and often may meet the next, up to three hours ahead of it.
  expect(said.filter(({ of, clockMs }) => clockMs < dueMs.get(of)! - 3 * HOUR_MS)).toEqual([])
}

describe('a year of jars by a clock that', () => {
  it('goes right', async () => expectOnce(await yearOf((ms) => ms, HOUR_MS)))

  it('is rewound again and again, by less than a day', async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 1, max: 23 }), fc.integer({ min: 2, max: 40 }), async (hours, every) => {
        // Ahead by so many hours for so many days, then right again.
        const isAhead = (ms: number) => Math.floor((ms - START_MS) / (every * DAY_MS)) % 2 === 1
        expectOnce(await yearOf((ms) => (isAhead(ms) ? ms + hours * HOUR_MS : ms), HOUR_MS))
      }),
      { seed: SEED, numRuns: runs(1, 60) },
    )
  })

  it('leaps ahead by months and back again', async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 2, max: 360 }), fc.integer({ min: 30, max: 900 }), async (day, leap) => {
        const from = START_MS + day * DAY_MS
        const isAhead = (ms: number) => ms >= from && ms < from + 5 * HOUR_MS
        const said = await yearOf((ms) => (isAhead(ms) ? ms + leap * DAY_MS : ms), HOUR_MS)
        // What was said while it was ahead counts as not said: each comes on its day all the same.
        expectOnce(said.filter(({ trueMs }) => !isAhead(trueMs)))
      }),
      { seed: SEED, numRuns: runs(1, 100) },
    )
  })

  it('drifts by minutes a day', async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: -30, max: 30 }), async (minutes) => {
        expectOnce(await yearOf((ms) => ms + ((ms - START_MS) / DAY_MS) * minutes * MINUTE_MS, HOUR_MS))
      }),
      { seed: SEED, numRuns: runs(1, 40) },
    )
  })
})
