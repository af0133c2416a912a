import { unlessRefused } from '../../../core/domain-error.ts'
import { readNumber } from '../../../core/quantity/read/read-number.ts'
import { readText } from '../../../core/quantity/read/tokens.ts'
import { numberTexts } from '../../../core/quantity/write/number-texts.ts'

const SIGNS = '½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞'

/** A number as amounts are typed, the longest form first: `2 3/4`, `2 ¾`, `3/4`, `½`, `1.5`, `10`. */
export const NUMBER = String.raw`(?:\d+\s+\d+\s?[/⁄]\s?\d+|\d+\s?[${SIGNS}]|[${SIGNS}]|\d+\s?[/⁄]\s?\d+|\d+(?:[.,]\d+)?)`

/** Nothing before a number that it would be a part of, and nothing behind it. */
export const WHOLE_BEFORE = String.raw`(?<![\d.,/⁄])(?<!\d\s+(?=\d+\s?[/⁄]))(?<!\d\s?(?=[${SIGNS}]))`
export const WHOLE_BEHIND = String.raw`(?!\d|[.,]\d|\s?[/⁄]\s?\d|\s?[${SIGNS}]|\s+\d+\s?[/⁄]\s?\d)`

/** What it counts; null of what is no number. */
export function numberOf(typed: string): number | null {
  const read = unlessRefused(() => readNumber(readText(typed, 'amount'), 0))
  return read?.readings[0]?.value ?? null
}

const IN_GRAMS = /^(?:g|ml|grams?|gramm[oi])$/iu
const IN_THOUSANDS = /^(?:l|kg|lit(?:re|er)s?|litr[oi]|kilos?|chil[oi])$/iu

/** A kitchen’s scale and jug tell no less. */
const leastOf = (value: number, unit: string): number => {
  if (IN_GRAMS.test(unit)) return value >= 10 ? 1 : 0.1
  return IN_THOUSANDS.test(unit) && value >= 0.3 ? 0.01 : 0
}

/** No more digits than a kitchen has; three behind a point would be thousands. */
function rounded(value: number, unit: string): string {
  const least = leastOf(value, unit)
  const near = least === 0 ? value : Math.round(value / least) * least
  return String(Number(near >= 100 ? near.toPrecision(4) : near.toPrecision(3)))
}

/** A number in the way of another: a fraction where that was one and the value has one. */
export function writtenLike(value: number, typed: string, unit = ''): string {
  const isFraction = /[^\d.,]/.test(typed)
  const [fraction] = isFraction ? numberTexts(value).filter((text) => text.includes('/')) : []
  return fraction ?? rounded(value, unit)
}
