import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import { isMonth } from '../../../core/quantity/time/part-of-month.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'

/** `For the wedding in June`: by its first day, where something is to be ready by then. */
export function monthMeant(typed: TypedText, at: number, spans: readonly ConceptSpan[]): string | null {
  const isBy = /^(?:in|by|for|before|until|till|a|entro|per|prima di)$/.test(wordAt(typed, at - 1))
  const isAlone = typed.tokens[at + 1]?.kind !== 'number' && isMonth(wordAt(typed, at))
  return isBy && isAlone && spans.some(({ concept }) => concept === 'by_day') ? `1 ${wordAt(typed, at)}` : null
}
