import type { ConceptSpan } from '../lexicon/concepts.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import type { Sentence } from './bit.ts'

const ONCE_MORE =
  /(?:^| )(?:once more|one more time|another time|a second time|over again|this time|un ?[’']? ?altra volta|ancora una volta|stavolta)(?= |$)/

/** `The raspberry once more, this time with a litre of vodka`: the same again, where it is told what it is to be made with and of no deed. */
export function onceMore({
  typed: { tokens },
  bits,
  spans,
}: Pick<Sentence, 'typed' | 'bits' | 'spans'>): readonly ConceptSpan[] {
  const text = tokens.map((token) => token.text).join(' ')
  const isOther = spans.some(({ concept }) => DEEDS.has(concept) || concept === 'again' || concept === 'asking')
  const isMade =
    bits.some(({ kind }) => kind === 'spirit' || kind === 'strength') &&
    bits.some(({ kind }) => kind === 'jar' || kind === 'plant')
  return ONCE_MORE.test(text) && isMade && !isOther ? [{ concept: 'again', from: 0, to: 1 }] : []
}
