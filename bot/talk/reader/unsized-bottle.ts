import { wordAt } from '../../../core/quantity/read/tokens.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import type { Bit, Sentence } from '../bits/bit.ts'

const JOINS = /^(?:and|plus|with|e|ed|piu|con|&|\+|,)$/
const ARTICLE = /^(?:an?|another|one|un|una|uno|un'altra)$/
/** How large it is, which is no size. */
const LARGE =
  /^(?:very|quite|small|smaller|little|tiny|wee|mini|big|bigger|large|larger|odd|half|sample|taster|piccol[aeio]|piccolin[aeio]|grand[ei]|mezza)$/
const BOTTLE =
  /^(?:ones?|bottles?|miniatures?|minis?|tasters?|samples?|flasks?|bottigli[ae]|bottigliett[ae]|boccett[ae])$/

/** Bottles of which nobody said the size beside those that are counted: `a small one`; as they were typed. */
export function unsizedBottles({ typed }: Sentence, used: readonly Bit[]): readonly string[] {
  const { tokens, text } = typed
  const isUsed = (at: number): boolean => used.some(({ from, to }) => from <= at && at < to)
  return tokens.flatMap((_, at) => {
    if (!JOINS.test(wordAt(typed, at)) && tokens[at]?.text !== '+') return []
    const from = at + 1
    const counted = ARTICLE.test(wordAt(typed, from)) ? from + 1 : (numberSaid(typed, from, new Set())?.next ?? null)
    if (counted === null) return []
    let next = counted
    while (LARGE.test(wordAt(typed, next))) next++
    const end = BOTTLE.test(wordAt(typed, next)) ? next + 1 : next
    const isSize = end > counted && !Array.from({ length: end - from }, (__, more) => from + more).some(isUsed)
    return isSize ? [text.slice(tokens[from]!.from, tokens[end - 1]!.to)] : []
  })
}
