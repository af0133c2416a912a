import { DomainError } from '../../domain-error.ts'
import { shown } from '../../quantity/read/tokens.ts'

const OF_FIVE = /^([1-5])\s*(?:(?:\/|of|out of)\s*5)?\s*(?:stars?)?$/iu
const STARS = /^[★⭐*]{1,5}$/u

/** 1 to 5, as in `4`, `4/5`, `4 of 5`, `4 stars` and `★★★★`; else throws `bad_rating`. */
export function parseRating(text: string): number {
  const typed = text.trim().replaceAll('\ufe0f', '')
  const number = OF_FIVE.exec(typed)
  if (number !== null) return Number(number[1])
  if (STARS.test(typed)) return [...typed].length
  throw new DomainError('bad_value', 'bad_rating', { typed: shown(text) })
}
