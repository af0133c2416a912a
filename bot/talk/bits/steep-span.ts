import type { Bit, Sentence } from './bit.ts'

const SPAN = /^(?:\d+(?:[.,]\d+)?|\p{L}+) (?:days?|weeks?|months?|giorn[oi]|settiman[ae]|mes[ei])$/u

/** How long something takes: `3 weeks`, which is also a day so far ahead. */
export const isSpan = ({ kind, text }: Bit): boolean => kind === 'span' || (kind === 'date' && SPAN.test(text))

const STEEPS =
  /\b(?:steep|soak|infuse|macerate|sit|stand|leave|let|rest)(?:s|d|ed|ing)?(?: (?:it|them|that|all|to|steep|sit|stand|infuse|soak|for|about|some|around|in|there|peace))* ?$|\b(?:macer|infus|ripos|lasci)\p{L}+(?: (?:li|tutto|per|circa|in|infusione|macerare|riposare))* ?$/u

/** `Steep for 25 days`, `in infusione per 3 settimane`: how long it steeps; no day on which it is to be ready. Null where it is not said. */
export function steepSpan({ bits, typed }: Pick<Sentence, 'bits' | 'typed'>): Bit | null {
  const spans = bits.filter(isSpan)
  const [span, another] = spans
  if (span === undefined || another !== undefined || typed.tokens.some(({ text }) => text === '?')) return null
  const before = typed.tokens.slice(Math.max(0, span.from - MOST_WORDS), span.from).map(({ text }) => text)
  return STEEPS.test(before.join(' ')) ? span : null
}

const MOST_WORDS = 6
