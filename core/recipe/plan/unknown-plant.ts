import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import { plainWords } from '../../botanical/plain-words.ts'
import { expectUnlikeRefused } from '../../botanical/sounds-refused.ts'
import { DomainError } from '../../domain-error.ts'
import { addDays, addMonths } from '../../quantity/calendar.ts'
import type { Measured } from '../../quantity/measured.ts'
import { massG } from '../../quantity/precision.ts'
import type { CalendarDay, Span } from '../../quantity/quantities.ts'
import { shown } from '../../quantity/typed-text.ts'
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
  /** What it is refused with, unless the maker answers for it. */
  readonly problem: DomainError<'unknown_botanical'>
}

/** One that the maker answers for: its amount is theirs. */
export interface UnknownPlant {
  readonly name: string
  readonly at: number
  readonly massG: Measured
}

/** The most water that a plant is, as a share. Estimated: nothing is known of this one. */
export const MOST_WATER_SHARE = 0.95
/** What drained plants keep, ml per g: all that the catalogue spans and some more. Estimated. */
export const KEPT_ML_PER_G = { min: 0.3, max: 2 } as const

/** A limit that an unknown plant's amount may well pass, g per litre of spirit. Common practice, no source. */
const NARROW_G_PER_L = 50

export const isUnknown = (error: unknown): error is DomainError<'unknown_botanical'> =>
  error instanceof DomainError && error.problem === 'unknown_botanical'

/**
 * Throws the problem again where it names no word, or is near a plant that has a limit: under another name that limit
 * would not be kept.
 */
export function typedUnknown(typed: TypedPlant, at: number, problem: TypedUnknown['problem']): TypedUnknown {
  const hasLimit = problem.values.nearest
    .map(botanicalById)
    .some(({ ceiling }) => ceiling !== null && ceiling.gPerLSpirit <= NARROW_G_PER_L)
  if (hasLimit || !/\p{L}/u.test(typed.noun)) throw problem
  const { amount, noun } = typed
  expectUnlikeRefused(noun)
  return { typed, name: shown(noun), at, massG: amount?.kind === 'mass' ? massG(amount) : null, problem }
}

/** Throws `plant_twice` where one is named again. */
export function expectOnce(unknown: readonly TypedUnknown[]): void {
  const keys = unknown.map(({ typed }) => plainWords(typed.noun).join(''))
  const again = unknown.find((_, index) => keys.indexOf(keys[index]!) !== index)
  if (again === undefined) return
  throw new DomainError('bad_value', 'plant_twice', { typed: again.typed.typed, id: null })
}

/** Throws `plant_not_weighed` where the maker gives no grams. */
export function answeredFor({ typed, name, at, massG }: TypedUnknown): UnknownPlant {
  if (massG === null) throw new DomainError('bad_value', 'plant_not_weighed', { typed: typed.typed })
  return { name, at, massG }
}

/** As a steep reckons with it: from none of its water, or having none, to all of 95 %. */
export const plantUnknown = ({ massG }: UnknownPlant): Plant => ({
  massG,
  waterShare: MOST_WATER_SHARE,
  sugarShare: 0,
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

export function toldDays(start: CalendarDay, steepFor: Span | null): ToldDays {
  if (steepFor === null) return { start, strainOn: null, sweetenBy: null }
  const { months, nominalDays } = steepFor
  const isWhole = months !== null && Number.isInteger(months)
  const strainOn = isWhole ? addMonths(start, months) : addDays(start, Math.round(nominalDays))
  return { start, strainOn, sweetenBy: addDays(strainOn, 1) }
}
