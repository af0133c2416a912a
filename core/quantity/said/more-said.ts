import { type TypedText, wordAt } from '../read/tokens.ts'
import { UNITS } from './number-words.ts'

const ARTICLES = new Set(['a', 'an', 'un', 'una', 'uno'])
const HALVES = new Set(['half', 'mezzo', 'mezza'])
const OF = new Set(['of', 'di'])

/** As many digits as a measure of a kitchen can carry; three decimals would be read as thousands. */
export const roundly = (value: number): number => Number(value < 1 ? value.toPrecision(3) : value.toFixed(2))

/** How much more than a whole number there is, and where that ends. */
export interface ShareMore {
  readonly share: number
  readonly next: number
}

const SHARES: ReadonlyMap<string, number> = new Map([
  ['quarter', 1 / 4],
  ['quarto', 1 / 4],
  ['third', 1 / 3],
  ['terzo', 1 / 3],
])
const SEVERAL_SHARES = /^(?:quarters?|quarti|thirds?|terzi)$/

/** `quarter` and `three quarters` behind an `and`; of `a quarter of a pint` the pint is meant. */
function shareAt(typed: TypedText, at: number, hasArticle: boolean): ShareMore | null {
  const share = hasArticle ? SHARES.get(wordAt(typed, at)) : undefined
  const isOther = OF.has(wordAt(typed, at + 1)) && ARTICLES.has(wordAt(typed, at + 2))
  if (share !== undefined) return isOther ? null : { share, next: at + 1 }
  const count = UNITS.get(wordAt(typed, at)) ?? Number(wordAt(typed, at))
  const dash = wordAt(typed, at + 1) === '-' ? 2 : 1
  const word = wordAt(typed, at + dash)
  if (hasArticle || (count !== 2 && count !== 3) || !SEVERAL_SHARES.test(word)) return null
  const parts = word.startsWith('t') ? 3 : 4
  return count < parts ? { share: count / parts, next: at + dash + 1 } : null
}

/**
 * `A litre of the 60 and half a stone of plums`, `and half dozen lemons`: half of something else. The `a` of `un litro e mezzo a 30 gradi`
 * is no article.
 */
const isOfAnother = (typed: TypedText, half: number): boolean =>
  (wordAt(typed, half) === 'half' && ARTICLES.has(wordAt(typed, half + 1))) ||
  /^(?:dozen|doz|dozzina)$/.test(wordAt(typed, half + 1))

/** `and a half`, `e mezzo`, `and three quarters`: null where nothing more stands there. */
export function moreAt(typed: TypedText, at: number): ShareMore | null {
  if (!['and', 'e', 'n'].includes(wordAt(typed, at))) return null
  const hasArticle = ARTICLES.has(wordAt(typed, at + 1))
  const after = hasArticle ? at + 2 : at + 1
  if (!HALVES.has(wordAt(typed, after))) return shareAt(typed, after, hasArticle)
  return !hasArticle && isOfAnother(typed, after) ? null : { share: 0.5, next: after + 1 }
}
