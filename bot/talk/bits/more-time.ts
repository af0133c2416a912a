import { numberWords } from '../../../core/quantity/read/number-words.ts'
import type { TypedText } from '../../../core/quantity/read/tokens.ts'

/** Beside a word for more these are no count. */
const ARTICLE = /^(?:an?|uno)$/

const UNITS: readonly (readonly [word: RegExp, unit: string, times: number])[] = [
  [/^(?:days?|giorn[oi])$/, 'day', 1],
  [/^(?:weeks?|settiman[ae])$/, 'week', 1],
  [/^fortnights?$/, 'week', 2],
  [/^(?:months?|mes[ei])$/, 'month', 1],
]

const MORE = /^(?:another|more|altr[oaie]|ancora|longer)$/

const MOST_WORDS = 3

export interface MoreTime {
  /** As a line has it: `in 2 weeks`. */
  readonly text: string
  readonly from: number
  readonly to: number
}

const countOf = (word: string): number | null =>
  (ARTICLE.test(word) ? null : numberWords.get(word)) ?? (/^\d{1,2}$/.test(word) ? Number(word) : null)

/** `Another week`, `two more weeks`, `altre due settimane`: how much longer; null where it is not said. */
export function moreTimeIn({ tokens }: TypedText): MoreTime | null {
  for (const [at, { text }] of tokens.entries()) {
    const unit = UNITS.find(([word]) => word.test(text))
    if (unit === undefined) continue
    let from = at
    while (from > 0 && at - from < MOST_WORDS && isOfMore(tokens[from - 1]!.text)) from--
    const words = tokens.slice(from, at).map((token) => token.text)
    const said = words.find((word) => countOf(word) !== null)
    // `More weeks` says not how many.
    const isOne = words.some((word) => /^(?:another|altr[oa])$/.test(word))
    if (!words.some((word) => MORE.test(word)) || (said === undefined && !isOne)) continue
    const count = (said === undefined ? 1 : countOf(said)!) * unit[2]
    return { text: `in ${count} ${unit[1]}${count === 1 ? '' : 's'}`, from, to: at + 1 }
  }
  return null
}

const isOfMore = (word: string): boolean => MORE.test(word) || countOf(word) !== null || /^[’']$/.test(word)
