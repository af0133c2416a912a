import type { Food } from '../../botanical/food.ts'
import { mostGPerL } from '../../botanical/foods/bounds.ts'
import { findFood } from '../../botanical/foods/find-food.ts'
import { unplannedFood } from '../../botanical/foods/unplanned.ts'
import { describe } from '../../botanical/names/descriptors.ts'
import { DomainError } from '../../domain-error.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { massG } from '../../quantity/measured/precision.ts'
import type { CalendarDay } from '../../quantity/quantities.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { addDays, addMonths } from '../../quantity/time/calendar-day.ts'
import { nameWords, plainWords } from '../../spelling/normalise-name.ts'
import type { SteepSpan } from '../batch.ts'
import type { Plant } from '../steep.ts'
import { between } from './between.ts'
import type { TypedPlant } from './parse-plants.ts'

/** A plant that is neither refused nor in the catalogue, as typed. */
export interface TypedUnknown {
  readonly typed: TypedPlant
  /** What it was called, fit to be shown. */
  readonly name: string
  /** Its place among the plants typed, from 0. */
  readonly at: number
  readonly massG: Measured | null
  /** The food of the list that it names; null where it names none. */
  readonly food: Food | null
  /** What it is refused with, unless it is a food and the maker gives the amount. */
  readonly problem: DomainError<'unknown_botanical'>
}

/** A food that the catalogue has no amounts for: its amount is the maker's. */
export interface UnknownPlant {
  readonly name: string
  readonly at: number
  readonly massG: Measured
}

/** The most water that a plant is, as a share. Estimated: nothing is known of this one. */
export const MOST_WATER_SHARE = 0.95
/** The most that dissolves of a plant, as a share: of dried ones a sixth to a half, of fresh ones a twentieth. Estimated. */
const MOST_EXTRACT_SHARE = 0.2
/** What drained plants keep, ml per g: all that the catalogue spans and some more. Estimated. */
export const KEPT_ML_PER_G = { min: 0.3, max: 2 } as const

type Unknown = DomainError<'unknown_botanical'>

export const isUnknown = (error: unknown): error is Unknown =>
  error instanceof DomainError && error.problem === 'unknown_botanical'

/** With what to type for it, where it is a food of the list. */
export function typedUnknown(typed: TypedPlant, at: number, { code, problem, values }: Unknown): TypedUnknown {
  const { amount, noun } = typed
  const found = values.food === null ? null : findFood(noun)
  const from = amount?.kind === 'mass' ? typed.typed : null
  const food = found === null ? values.food : unplannedFood(found.food, found.isAnswered, { noun, from })
  const retype = food === null ? null : { ...food, retype: { ...food.retype, from: typed.typed } }
  return {
    typed,
    name: shown(noun),
    at,
    massG: amount?.kind === 'mass' ? massG(amount) : null,
    food: found?.food ?? null,
    problem: new DomainError(code, problem, { ...values, food: retype }),
  }
}

/** Throws `plant_twice` where one is named again. */
export function expectOnce(unknown: readonly TypedUnknown[]): void {
  const keys = unknown.map(({ typed }) => plainWords(typed.noun).join(''))
  const again = unknown.find((_, index) => keys.indexOf(keys[index]!) !== index)
  if (again === undefined) return
  throw new DomainError('bad_value', 'plant_twice', { typed: again.typed.typed, id: null })
}

/** Throws where it is no food of the list, or a part is still to be said, or the maker gives no grams. */
export function answeredFor({ typed, name, at, massG, food, problem }: TypedUnknown): UnknownPlant {
  if (food === null || problem.values.food?.question !== null) throw problem
  if (massG === null) throw new DomainError('bad_value', 'plant_not_weighed', { typed: typed.typed })
  return { name, at, massG }
}

/** Throws `over_food_bound` where a litre of what was poured would hold more of a food than is usual of its kind. */
export function expectUsual(unknown: readonly Pick<UnknownPlant, 'name' | 'massG'>[], pouredMl: number): void {
  for (const { name, massG } of unknown) {
    const food = findFood(name)?.food
    if (food === undefined) continue
    const most = mostGPerL(food, describe(nameWords(name)).state === 'dried')
    const mostG = (most * pouredMl) / 1000
    if (massG.value <= mostG) continue
    const values = { name, mostG, volumeMl: pouredMl, mostGPerL: most }
    throw new DomainError('over_ceiling', 'over_food_bound', values)
  }
}

/** As a steep reckons with it: from none of its water, or having none, to all of 95 %. */
export const plantUnknown = ({ massG }: Pick<UnknownPlant, 'massG'>): Plant => ({
  massG,
  waterShare: exactly(MOST_WATER_SHARE),
  sugarShare: exactly(0),
  extractShare: between(0, MOST_EXTRACT_SHARE),
  exchangeShare: between(0, 1),
  keptMlPerG: between(KEPT_ML_PER_G.min, KEPT_ML_PER_G.max),
  bulky: true,
})

/** The days of a batch with such a plant: those the maker gave, and no more. */
export interface ToldDays {
  readonly start: CalendarDay
  /** Null where the maker did not say for how long. */
  readonly strainOn: CalendarDay | null
  readonly sweetenBy: CalendarDay | null
}

export function toldDays(start: CalendarDay, steepFor: SteepSpan | null): ToldDays {
  if (steepFor === null) return { start, strainOn: null, sweetenBy: null }
  const { months, nominalDays } = steepFor
  const isWhole = months !== null && Number.isInteger(months)
  const strainOn = isWhole ? addMonths(start, months) : addDays(start, Math.round(nominalDays))
  return { start, strainOn, sweetenBy: addDays(strainOn, 1) }
}
