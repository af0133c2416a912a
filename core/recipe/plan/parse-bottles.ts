import { DomainError } from '../../domain-error.ts'
import { US_FLUID_OUNCE_ML } from '../../quantity/customary.ts'
import type { Volume } from '../../quantity/quantities.ts'
import type { UnitSystem } from '../../quantity/read/parse-units.ts'
import { parseVolume } from '../../quantity/read/parse-volume.ts'
import { splitList } from '../../quantity/read/split-list.ts'
import { shown } from '../../quantity/read/tokens.ts'

/** Some bottles of one size. */
export interface Bottles {
  /** Null where only their size was said. */
  readonly count: number | null
  readonly volumeMl: number
  /** The size as typed; null where only a number was, and half a litre is taken. */
  readonly size: Volume | null
}

/** Taken where nothing is said of the size. */
export const USUAL_BOTTLE_ML = 500

/** The same where a kitchen pours in cups: a bottle of 12 fl oz, with a swing top or a crown cap (common practice, no source). */
const US_BOTTLE_ML = 12 * US_FLUID_OUNCE_ML

export const usualBottleMl = (system: UnitSystem): number => (system === 'us' ? US_BOTTLE_ML : USUAL_BOTTLE_ML)

const MOST_BOTTLES = 10_000

const COUNTED = /^([0-9]+)\s*(?:(?:[x×*]|bottles?|bottigli[ae])\s*(?:of\s+|da\s+|di\s+)?|(?:of|da|di)\s+)(?=\S)(.+)$/iu
const NUMBER = /^([0-9]+)\s*(?:bottles?|bottigli[ae])?$/iu

const countIn = (digits: string, typed: string): number => {
  const count = Number(digits)
  if (count >= 1 && count <= MOST_BOTTLES) return count
  throw new DomainError('bad_value', 'bottles_not_read', { typed: shown(typed) })
}

/** A text without any number is no volume that slipped. */
function sizeIn(text: string, typed: string): Volume {
  try {
    // What is filled is told in fluid ounces.
    return parseVolume(text.replace(/(?<=\d ?)(?:oz|ounces?)$/i, ' fl oz'))
  } catch (error) {
    if (!(error instanceof DomainError) || error.problem !== 'no_number') throw error
    throw new DomainError('bad_value', 'bottles_not_read', { typed: shown(typed) })
  }
}

const bottlesOf = (text: string): Bottles => {
  const number = NUMBER.exec(text)
  if (number !== null) return { count: countIn(number[1]!, text), volumeMl: USUAL_BOTTLE_ML, size: null }
  const counted = COUNTED.exec(text)
  const size = sizeIn(counted?.[2] ?? text, text)
  if (size.atC !== null) throw new DomainError('bad_value', 'bottles_not_read', { typed: shown(text) })
  return { count: counted === null ? null : countIn(counted[1]!, text), volumeMl: size.volumeMl, size }
}

/** Bottles joined with `+`: `4 x 500 ml`, `4 bottles of 500 ml`, `4 of 500 ml`, `4` (of half a litre), `500 ml` (as many as it fills). */
export const parseBottles = (text: string): readonly Bottles[] =>
  splitList(text).map(({ text: item }) => bottlesOf(item))
