import type { Sentence } from '../bits/bit.ts'
import { wordSet } from '../lexicon/concepts.ts'

const LEAST_LETTERS = 5

/** `1 kg blackburies`: so much of something that no word is known of is another batch, and none of what was worked out before. */
export function weighsUnknown({ bits, typed: { tokens }, spans, lexicon }: Sentence): boolean {
  const small = [wordSet(lexicon.fillers), wordSet(lexicon.between)]
  const isKnown = (at: number): boolean =>
    [...bits, ...spans].some(({ from, to }) => from <= at && at < to) ||
    small.some((words) => words.has(tokens[at]!.text))
  return bits.some(({ kind, to, with: place }) => {
    const at = /^(?:of|di|d)$/.test(tokens[to]?.text ?? '') ? to + 1 : to
    const { kind: of = 'sign', text = '' } = tokens[at] ?? {}
    return kind === 'mass' && place === undefined && of === 'word' && text.length >= LEAST_LETTERS && !isKnown(at)
  })
}
