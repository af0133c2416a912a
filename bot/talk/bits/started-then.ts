import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import type { Sentence } from './bit.ts'
import { isPastDay } from './past-day.ts'

const START = /^(?:start|starts|begin|log|record|inizia\p{L}*|comincia\p{L}*|avvia\p{L}*|registra\p{L}*)$/u
const UNSURE: readonly Concept[] = ['asking', 'hypothesis', 'wish', 'denial', 'started', 'log_start', 'remind']

/** `Start 300 g sloes in 70 cl gin, 5 weeks ago`: an order that names a day that is over tells of what was done on it. */
export function startedThen({
  typed: { tokens },
  bits,
  spans,
}: Pick<Sentence, 'typed' | 'bits' | 'spans'>): readonly ConceptSpan[] {
  const at = tokens.findIndex(({ text }) => START.test(text))
  const isUnsure = spans.some(({ concept }) => UNSURE.includes(concept)) || tokens.some(({ text }) => text === '?')
  const isBatch =
    bits.some(({ kind }) => kind === 'plant') &&
    bits.some(({ kind }) => kind === 'spirit' || kind === 'strength') &&
    bits.filter(isPastDay).length === 1
  return at === -1 || isUnsure || !isBatch ? [] : [{ concept: 'log_start', from: at, to: at + 1 }]
}
