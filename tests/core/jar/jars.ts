import type { Happening, Ingredients, JarEntry, Moment, PlantIn, Started } from '../../../core/jar/entry/entry.ts'
import { record } from '../../../core/jar/record/record.ts'
import { replay, type UnsoundEntry } from '../../../core/jar/record/replay.ts'
import { type JarState, jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { exactly, type Measured } from '../../../core/quantity/measured/measured.ts'
import { addDays, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { spirit } from '../recipe-plan/wishes.ts'

/** What a test says of a jar's plan. */
export type Planned = Started['days'] & Pick<Started, 'targets' | 'bottles'>

export const DAY_MS = 86_400_000
/** 1 November 2026, noon in UTC. */
export const START_MS = Date.UTC(2026, 10, 1, 12)

/** `day` days after the start, at noon and `minutes`. */
export const on = (day: number, minutes = 0): Moment => ({
  atMs: START_MS + day * DAY_MS + minutes * 60_000,
  day: isoDay(addDays({ year: 2026, month: 11, day: 1 }, day)),
  zone: 'UTC',
})

const PLAN: Planned = {
  targets: null,
  bottles: [],
  tasteFrom: null,
  strainFrom: null,
  strainBy: null,
  restDays: 30,
  isHours: false,
  steepHours: null,
}

export const NOTHING_NAMED: Started['named'] = {
  isStrengthNamed: false,
  isSweetnessNamed: false,
  areBottlesNamed: false,
  isSpiritNamed: true,
  steepAtPercent: null,
  readyBy: null,
  steepFor: null,
}

const NOTHING: Ingredients = { plants: [], spirits: [], waterG: exactly(0), sweetenings: [] }

export const plant = (id: string | null, massG: number | Measured, rest: Partial<PlantIn> = {}): PlantIn => ({
  id,
  name: id ?? 'meadow tips',
  isDried: false,
  massG: typeof massG === 'number' ? exactly(massG) : massG,
  count: null,
  isUsual: false,
  words: null,
  addOn: null,
  ...rest,
})

/** The fields of a start that say what was planned. */
export const asPlanned = ({ targets, bottles, ...days }: Planned) => ({
  targets,
  bottles,
  days,
  named: {
    ...NOTHING_NAMED,
    areBottlesNamed: bottles.some(({ count, volumeMl }) => count !== null || volumeMl !== 500),
  },
  origin: null,
})

/** A litre of 95 % vol and 150 g of lemon peel, unless a test says otherwise. */
export const started = ({ plan, ...rest }: Partial<Started> & { plan?: Partial<Planned> } = {}): Started => ({
  kind: 'started',
  name: 'lemon',
  ...asPlanned({ ...PLAN, ...plan }),
  ...NOTHING,
  spirits: [spirit(1000, 95)],
  plants: [plant('lemon_peel', 150)],
  ...rest,
})

export const added = (what: Partial<Extract<Happening, { kind: 'added' }>>): Happening => ({
  kind: 'added',
  ...NOTHING,
  ...what,
})

export const ml = (value: number, plusMinus = value * 0.02, atC = 20) =>
  ({ amount: { value, plusMinus }, by: 'volume', atC }) as const
export const grams = (value: number, plusMinus = 1) => ({ amount: { value, plusMinus }, by: 'mass', atC: 20 }) as const

export const strength = (value: number, atC: number | null = null, plusMinus = 0.5) => ({
  abvPercent: { value, plusMinus },
  abvAtC: atC,
  readsProof: false,
})

export const strained = (rest: Partial<Extract<Happening, { kind: 'strained' }>> = {}): Happening => ({
  kind: 'strained',
  measured: null,
  strength: null,
  rinseWaterG: exactly(0),
  ...rest,
})

export const sweetened = (waterG: number, sugarG: number): Happening => ({
  kind: 'sweetened',
  waterG: exactly(waterG),
  sweetenings: whiteSugar(exactly(sugarG)),
})

export const META = { enteredMs: START_MS, typed: [], zone: 'UTC' } as const

/** What happened, a day apart, each recorded. */
export const entriesOf = (...happenings: readonly Happening[]): readonly JarEntry[] =>
  happenings.reduce<readonly JarEntry[]>((entries, each, day) => record(entries, each, on(day), META).entries, [])

export const storyFrom = (...happenings: readonly Happening[]): JarState => jarStateOf(entriesOf(...happenings))!

/** What `replay` finds, nobody's turn in between. */
export function unsoundIn(entries: readonly JarEntry[], mostTyped = 4000): UnsoundEntry | null {
  const replaying = replay(entries, mostTyped)
  for (;;) {
    const { done, value } = replaying.next()
    if (done === true) return value
  }
}
