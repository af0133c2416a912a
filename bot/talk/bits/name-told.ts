import { type TypedText, textFrom, wordAt } from '../../../core/quantity/read/tokens.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'

const CALLED = /^(?:called|named|chiamat[oa])$/
const BEGUN: ReadonlySet<string> = new Set(['started', 'log_start', 'added', 'put_in'])
/** A name ends before one of these, or before a number. */
const ENDS = /^(?:[,.;:!?()+&-]|with|of|from|in|on|for|to|and|con|di|da|in|su|per|e|today|yesterday|oggi|ieri)$/
const MOST_WORDS = 4

export interface NameTold {
  readonly text: string
  readonly from: number
  readonly to: number
}

/** What a jar that is begun is called, as it was typed: `started a jar called Rosehip Row: 500 g sloes …`; null where nothing is. */
export function nameTold(typed: TypedText, spans: readonly ConceptSpan[]): NameTold | null {
  if (!spans.some(({ concept }) => BEGUN.has(concept))) return null
  const at = typed.tokens.findIndex(({ text }) => CALLED.test(text))
  if (at === -1) return null
  let to = at + 1
  while (
    to < typed.tokens.length &&
    to <= at + MOST_WORDS &&
    typed.tokens[to]!.kind === 'word' &&
    !ENDS.test(wordAt(typed, to))
  )
    to++
  return to === at + 1 ? null : { text: textFrom(typed, at + 1, to), from: at + 1, to }
}
