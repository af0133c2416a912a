import { catalogue } from '../../botanical/catalogue/catalogue.ts'
import { isRefused } from '../../domain-error.ts'
import { liquidFrom } from '../../liquid/liquid.ts'
import { dayNumber } from '../../quantity/time/day-number.ts'
import { dayNumberAt } from '../../quantity/time/zone.ts'
import { liquidOf } from '../../recipe/portion.ts'
import { valuesOf } from '../../recipe/propagate.ts'
import type { Targets } from '../../recipe/targets.ts'
import type { Happening, JarEntry, Moment } from '../entry/entry.ts'
import { parseJarName } from '../entry/jar-name.ts'
import { plantsPutIn } from '../entry/plants-put-in.ts'
import { MOST_NOTE_CHARACTERS } from './bounds.ts'

/** What can be wrong with an entry by itself. */
export type EntryFault = 'amount' | 'day' | 'name' | 'plant' | 'long'

const DAY_MS = 86_400_000
/** Clocks of two machines, and days of two zones, lie no further apart. */
const APART_DAYS = 3
const TWENTY_YEARS_DAYS = 20 * 366
/** The years that a day can name, 0 to 9999: whatever a clock said, it was one of these. */
const [EARLIEST_MS, LATEST_MS] = [Date.parse('0000-01-01'), Date.parse('9999-12-31')]

/** No weaker spirit or drink can be typed, % vol. */
const LEAST_SPIRIT_PERCENT = 0.1

/** Nothing less can be typed of what was poured out of a jar, mL or g. */
const LEAST_MEASURED = 0.01

const MOST_TYPED = 40
const OPTION = /^[a-z][a-z-]{0,39}$/
const MOST_PLANT_NAME = 600
const MOST_PARTS = 60
/** Of a jar, less than a drop of the largest. */
const LEAST_SHARE = 1e-6
/** Where a jar stands, and what it is in, in UTF-16 units. */
const MOST_PLACE = 200

/** What a kitchen has of each quantity, by the name that it has in an entry. */
const RANGES: Readonly<Record<string, readonly [least: number, most: number]>> = {
  amount: [0, 1e6],
  massG: [0, 1e6],
  waterG: [0, 1e6],
  rinseWaterG: [0, 1e6],
  volumeMl: [0, 1e6],
  abvPercent: [0, 100],
  sugarGPerL: [0, 1300],
  atC: [-30, 100],
  abvAtC: [-30, 100],
  count: [0, 10_000],
  steepAtPercent: [0, 100],
  days: [0, TWENTY_YEARS_DAYS],
  months: [0, 240],
  nominalDays: [0, TWENTY_YEARS_DAYS],
  restDays: [0, TWENTY_YEARS_DAYS],
  min: [0, 24 * TWENTY_YEARS_DAYS],
  max: [0, 24 * TWENTY_YEARS_DAYS],
}

/** Days that a plan or a promise names. */
const DAYS = new Set(['addOn', 'tasteFrom', 'strainFrom', 'strainBy', 'readyBy', 'untilDay'])

const known: ReadonlySet<string> = new Set(catalogue.map(({ id }) => id))

type Parts = readonly (readonly [name: string, value: unknown])[]

/** Values are listed with their names however deep they lie; a measured one and its ± go by the same name. */
const partsOf = (value: unknown, name = ''): Parts => {
  if (typeof value !== 'object' || value === null) return [[name, value]]
  if (Array.isArray(value)) return value.flatMap((each) => partsOf(each, name))
  if ('plusMinus' in value && 'value' in value)
    return [
      [name, value.value],
      [name, value.plusMinus],
    ]
  return Object.entries(value).flatMap(([key, inner]) => partsOf(inner, key))
}

const isInRange = ([name, value]: Parts[number]): boolean => {
  const range = RANGES[name]
  return typeof value !== 'number' || range === undefined || (value >= range[0] && value <= range[1])
}

/** None of it, or so much that it can be poured. */
const isShare = (share: number): boolean => share === 0 || (share >= LEAST_SHARE && share <= 1)

const isName = (name: string): boolean => !isRefused(() => parseJarName(name)) && parseJarName(name) === name

const plantsIn = (happening: Happening) => (happening.kind === 'taken_out' ? happening.plants : plantsPutIn(happening))

const listsIn = (happening: Happening): readonly (readonly unknown[])[] =>
  Object.values(happening).filter((value) => Array.isArray(value))

const spiritsIn = (happening: Happening) =>
  happening.kind === 'started' || happening.kind === 'added' ? happening.spirits : []

/** Whether it can be wished for, and a litre can be as strong and as sweet. */
const canBe = (targets: Targets): boolean =>
  targets.abvPercent >= LEAST_SPIRIT_PERCENT && !isRefused(() => liquidFrom({ volumeMl: 1000, ...targets }))

/** `around`: days near one of which every day lies that it names; clocks may have been wrong at some of them. */
function happeningFault(happening: Happening, around: readonly number[]): EntryFault | null {
  const parts = partsOf(happening)
  if (!parts.every(isInRange)) return 'amount'
  if (spiritsIn(happening).some(({ abvPercent }) => abvPercent.value < LEAST_SPIRIT_PERCENT)) return 'amount'
  if (happening.kind === 'started' && happening.targets !== null && !canBe(happening.targets)) return 'amount'
  if ((happening.kind === 'strained' || happening.kind === 'filtered') && happening.measured !== null) {
    if (happening.measured.amount.value < LEAST_MEASURED) return 'amount'
  }
  if (happening.kind === 'sweetened' && happening.ofFruit !== undefined) {
    const { measured } = happening.ofFruit
    if (measured !== null && measured.amount.value < LEAST_MEASURED) return 'amount'
  }
  const days = parts.flatMap(([name, value]) => (DAYS.has(name) && typeof value === 'string' ? [dayNumber(value)] : []))
  if (days.some((day) => around.every((each) => Math.abs(day - each) > TWENTY_YEARS_DAYS))) return 'day'
  if (happening.kind === 'put_off' && happening.untilMs !== null) {
    if (Math.abs(dayNumber(happening.untilDay) - happening.untilMs / DAY_MS) > APART_DAYS) return 'day'
  }
  if ((happening.kind === 'started' || happening.kind === 'renamed') && !isName(happening.name)) return 'name'
  if (happening.kind === 'poured_in' && happening.into !== null && !isName(happening.into)) return 'name'
  if (happening.kind === 'poured_in' && isRefused(() => liquidOf(valuesOf(happening.liquid)))) return 'amount'
  if (happening.kind === 'started' && happening.secondOf !== undefined) {
    const { soaked, sweetenings = [], plants: again, other, otherId } = happening.secondOf
    if (isRefused(() => liquidOf(valuesOf(soaked)))) return 'amount'
    if (
      again.length > MOST_PARTS ||
      sweetenings.length > MOST_PARTS ||
      other.length > MOST_PLACE ||
      otherId.length > MOST_PLACE
    )
      return 'long'
  }
  if (happening.kind === 'parted' && !isShare(happening.kept.value)) return 'amount'
  const enzyme = happening.kind === 'started' || happening.kind === 'added' ? (happening.enzyme ?? '') : ''
  if (enzyme.length > MOST_PLACE) return 'long'
  const isWords = happening.kind === 'tasted' || happening.kind === 'noted'
  if (isWords && [...(happening.note ?? '')].length > MOST_NOTE_CHARACTERS) return 'long'
  if (
    happening.kind === 'noted' &&
    [happening.where, happening.vessel].some((text) => (text?.length ?? 0) > MOST_PLACE)
  )
    return 'long'
  const plants = plantsIn(happening)
  if (plants.some(({ id }) => id !== null && !known.has(id))) return 'plant'
  if (plants.some(({ name }) => name.length > MOST_PLANT_NAME)) return 'long'
  return listsIn(happening).some(({ length }) => length > MOST_PARTS) ? 'long' : null
}

const momentFault = ({ atMs, day, zone }: Moment): EntryFault | null =>
  atMs < EARLIEST_MS || atMs > LATEST_MS || Math.abs(dayNumber(day) - dayNumberAt(zone, atMs)) > APART_DAYS
    ? 'day'
    : null

/**
 * What is wrong with an entry by itself, whatever stands before it and whatever the clock said; `ofJar`: the days of its
 * jar's start and of the entry that it corrects, counted from 1970.
 */
export function entryFault(entry: JarEntry, ofJar: readonly number[], mostTyped: number): EntryFault | null {
  const { typed, enteredMs } = entry
  if (typed.length > MOST_TYPED || typed.some(([option, text]) => !OPTION.test(option) || text.length > mostTyped)) {
    return 'long'
  }
  if (enteredMs < EARLIEST_MS || enteredMs > LATEST_MS) return 'day'
  const moment = momentFault(entry)
  if (moment !== null || entry.kind === 'undone') return moment
  const around = [...ofJar, dayNumber(entry.day), Math.floor(enteredMs / DAY_MS)]
  if (entry.kind !== 'corrected') return happeningFault(entry, around)
  const { moved } = entry
  const wrong = moved === null ? null : momentFault(moved)
  return wrong ?? happeningFault(entry.by, moved === null ? around : [...around, dayNumber(moved.day)])
}
