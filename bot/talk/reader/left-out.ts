import type { Bit, Sentence } from '../bits/bit.ts'
import { wordSet } from '../lexicon/concepts.ts'

/** Words that are neither used, nor among the language's fillers, nor part of a phrase that is understood; as they were typed. */
export function leftOutOf(sentence: Sentence, used: readonly Bit[], cues: readonly string[] = []): readonly string[] {
  const { typed, lexicon, spans, bits } = sentence
  const fillers = wordSet(lexicon.fillers)
  const between = wordSet(lexicon.between)
  const loose = wordSet(lexicon.loose)
  const isUsed = (at: number): boolean => used.some(({ from, to }) => from <= at && at < to)
  const isPhrase = (at: number): boolean => spans.some(({ from, to }) => from <= at && at < to)
  // A second deed in the sentence was not done: `shook it and strained it`.
  const isOtherDeed = (at: number): boolean => {
    const deeds = spans.filter(({ concept, from, to }) => DEEDS.has(concept) && from <= at && at < to)
    return cues.length > 0 && deeds.length > 0 && !deeds.some(({ concept }) => cues.includes(concept))
  }
  const unusedBit = (at: number): Bit | undefined => bits.find(({ from, to }) => from <= at && at < to)
  return typed.tokens.flatMap(({ kind, text, from, to }, at) => {
    if (kind === 'sign' || isUsed(at)) return []
    const bit = unusedBit(at)
    const shown = typed.text.slice(from, to)
    if (bit !== undefined) return bit.from === at ? [typed.text.slice(from, typed.tokens[bit.to - 1]!.to)] : []
    if (kind === 'number') return [shown]
    if (SAYS_SOMETHING.test(text) || isOtherDeed(at)) return [shown]
    if (fillers.has(text) || isPhrase(at) || text.length < 2) return []
    if (between.has(text) && !loose.has(text)) return []
    return loose.has(text) && isNextToUsed(at, used) ? [] : [shown]
  })
}

/** What is done to a jar, told as done. */
const DEEDS: ReadonlySet<string> = new Set([
  'shook',
  'strained',
  'sweetened',
  'filtered',
  'bottled',
  'tasted',
  'opened',
  'started',
])

/** Said beside a name, and of no weight in the reckoning; named all the same. */
const SAYS_SOMETHING = /^(?:organic|unwaxed|untreated|homemade|wild|foraged|bio|biologic[oaie])$/

/** `bunch of basil`: the piece is in the text that is used. */
const isNextToUsed = (at: number, used: readonly Bit[]): boolean =>
  used.some(({ loose, from }) => loose !== undefined && from > at && from - at <= 3)
