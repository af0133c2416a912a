import type { Happening, JarEntry, Started } from '../../../core/jar/entry/entry.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { type Jar, NOBODY, type Person } from '../../../store/person.ts'
import { asPlanned, type Planned, plant } from '../../core/jar/jars.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'

/** Noon of 20 November 2026, UTC. */
export const NOW_MS = Date.UTC(2026, 10, 20, 12)

const NO_PLAN: Planned = {
  targets: null,
  tasteFrom: null,
  strainFrom: null,
  strainBy: null,
  restDays: null,
  isHours: false,
  steepHours: null,
  bottles: [],
}

type Typed = JarEntry['typed']

/** A litre of 95 % with 80 g of lemon peel, planned for 30 % vol and 250 g/L. */
export const startedAs = (name: string, more: Partial<Started> = {}, plan: Partial<Planned> = {}): Started => ({
  kind: 'started',
  name,
  plants: [plant('lemon_peel', { value: 80, plusMinus: 1 }, { name: 'Lemon peel' })],
  spirits: [
    {
      amount: { value: 1000, plusMinus: 20 },
      by: 'volume',
      atC: 20,
      abvPercent: { value: 95, plusMinus: 0.3 },
      abvAtC: null,
      sugarGPerL: exactly(0),
    },
  ],
  waterG: exactly(0),
  sweetenings: [],
  ...more,
  ...asPlanned({ ...NO_PLAN, targets: { abvPercent: 30, sugarGPerL: 250 }, ...plan }),
})

type Told = (Happening | { kind: 'undone'; of: number } | { kind: 'corrected'; of: number; by: Happening }) & {
  readonly on: string
  readonly typed?: Typed
}

/** The entries of a jar, numbered in the order told; each at noon of its day. */
export const entriesOf = (told: readonly Told[]): readonly JarEntry[] =>
  told.map(({ on, typed = [], ...what }, index) => {
    const atMs = Date.parse(`${on}T12:00:00Z`) + index
    const moved = what.kind === 'corrected' ? { moved: null } : {}
    return { seq: index + 1, enteredMs: atMs, typed, atMs, day: on, zone: 'UTC', ...what, ...moved } as JarEntry
  })

export const jarOf = (id: string, told: readonly Told[]): Jar => ({
  id,
  entries: entriesOf(told),
  told: [],
  cautioned: [],
})

/** Somebody with these jars, and a terminal to look at them. */
export const deskWith = async (person: Partial<Person>, { width = 80, nowMs = NOW_MS } = {}) => {
  const asker = newAsker()
  await asker.store.update(asker.userId, () => ({ ...NOBODY, ...person }))
  return testDesk({ asker, width, nowMs })
}
