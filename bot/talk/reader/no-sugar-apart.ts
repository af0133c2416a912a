import { textFrom, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { DEEDS } from '../lexicon/lexicon.ts'

const JOIN = /^(?:and|but|so|with|e|ed|ma|[,;.!])$/

/** The clause and nothing else: `no sugar this time`, `senza zucchero`. */
const CLAUSE =
  /^(?:(?:i|we|it|its|i ll|ill|this one|with|left|leave|leaving|wanted|want|just) )*(?:no|without|zero|senza|niente|nessuno)(?: (?:any|more|added|the))* (?:sugar|syrup|zucchero|sciroppo)(?: (?:at all|in it|in this one|this time|for me|for this one|please|thanks|per me|questa volta|stavolta|grazie))*$/u

/** `No sugar` that is wished beside a deed, and what is told without it; null where nothing of the kind stands in a clause of its own. */
export function noSugarApart(sentence: Sentence): { readonly wish: string; readonly rest: string } | null {
  const { typed } = sentence
  if (!/sugar|syrup|zucchero|sciroppo/i.test(typed.text) || typed.text.includes('?')) return null
  if (sentence.has('started', 'hypothesis', 'asking') || !sentence.has(...DEEDS, 'took_out')) return null
  // `Stirred in 120 g sugar, no syrup`: how it went in.
  if (sentence.has('sweetened', 'syrup_in') || sentence.bits.some(({ kind, value }) => kind === 'sugar' && value > 0))
    return null
  const { tokens } = typed
  const joins = tokens.flatMap(({ text }, at) => (JOIN.test(text) ? [at] : []))
  const edges = [-1, ...joins, tokens.length]
  for (const [at, edge] of edges.slice(0, -1).entries()) {
    const to = edges[at + 1]!
    const words = wordsFrom(typed, edge + 1, to)
    if (!CLAUSE.test(words.replaceAll(/['’]/gu, ''))) continue
    const before = textFrom(typed, 0, Math.max(0, edge))
    let from = to
    while (from < tokens.length && JOIN.test(tokens[from]!.text)) from++
    const behind = textFrom(typed, from, tokens.length)
    const rest = [before, behind].filter((part) => part !== '').join(', ')
    return rest === '' ? null : { wish: textFrom(typed, edge + 1, to), rest }
  }
  return null
}
