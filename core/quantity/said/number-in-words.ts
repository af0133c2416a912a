import { type TypedText, wordAt } from '../read/tokens.ts'
import { ENGLISH_TENS, HUNDREDS, joinedItalian, TENS, UNITS } from './number-words.ts'

interface InWords {
  readonly value: number
  readonly next: number
}

export const ARTICLES: ReadonlySet<string> = new Set(['a', 'an', 'un', 'una', 'uno'])

/** `Six fifty ml bottles` are six; `nine hundred` has its own word. */
const isOfSize = (typed: TypedText, at: number): boolean =>
  HUNDREDS.has(wordAt(typed, at)) ||
  [at, at + 1].some((place) => /^(?:bottles?|bottigli[ae]|ones|jars?|minis?|flasks?)$/.test(wordAt(typed, place)))

/** `twenty five`, `seven`: less than a hundred, or what Italian writes as one word. */
function belowHundredAt(typed: TypedText, from: number): InWords | null {
  const tens = TENS.get(wordAt(typed, from))
  if (tens !== undefined) {
    const dash = wordAt(typed, from + 1) === '-' ? 2 : 1
    const unit = UNITS.get(wordAt(typed, from + dash))
    return unit !== undefined && unit > 0 && unit < 10
      ? { value: tens + unit, next: from + dash + 1 }
      : { value: tens, next: from + 1 }
  }
  const small = UNITS.get(wordAt(typed, from)) ?? joinedItalian(wordAt(typed, from))
  return small === null ? null : { value: small, next: from + 1 }
}

/** `twenty five`, `two hundred and fifty`, `trecento`; null where no number in words begins. */
export function numberInWords(typed: TypedText, at: number): InWords | null {
  let sum: number | null = null
  let next = at
  const first = belowHundredAt(typed, at)
  if (first !== null) [sum, next] = [first.value, first.next]
  // `Six eighty`: hundreds without their word.
  const isDigit = first !== null && first.value >= 1 && first.value <= 9
  const behind = isDigit && ENGLISH_TENS.has(wordAt(typed, next)) ? belowHundredAt(typed, next) : null
  if (first !== null && behind !== null && !isOfSize(typed, behind.next))
    return { value: first.value * 100 + behind.value, next: behind.next }
  const times = HUNDREDS.get(wordAt(typed, next))
  const isArticle = sum === null && ARTICLES.has(wordAt(typed, at)) && HUNDREDS.has(wordAt(typed, at + 1))
  if (isArticle) [sum, next] = [HUNDREDS.get(wordAt(typed, at + 1))!, at + 2]
  else if (times !== undefined && (sum === null || sum < 100)) [sum, next] = [(sum ?? 1) * times, next + 1]
  if (sum === null) return null
  if (sum >= 100 && first?.value !== sum) {
    const more = belowHundredAt(typed, wordAt(typed, next) === 'and' ? next + 1 : next)
    if (more !== null && more.value < 100) [sum, next] = [sum + more.value, more.next]
  }
  return { value: sum, next }
}
