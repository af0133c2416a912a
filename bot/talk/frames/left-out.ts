import type { Bit, Sentence } from '../bits/bit.ts'
import { wordSet } from '../lexicon/concepts.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import { isPerson } from '../lexicon/people.ts'
import { isWhereFrom } from './where-from.ts'

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
    const around = spans.filter((span) => span.from <= at && at < span.to)
    // `Mi hanno regalato 2 kg`: within a longer phrase it is no deed.
    const deeds = around.filter(
      ({ concept, from, to }) => OTHER_DEEDS.has(concept) && !around.some((other) => other.to - other.from > to - from),
    )
    // `Put in` is said of a jar that is moved as well as of what is added.
    const isDone = around.some(({ concept }) => DEEDS.has(concept) && cues.includes(concept))
    return cues.length > 0 && deeds.length > 0 && !isDone
  }
  const unusedBit = (at: number): Bit | undefined => bits.find(({ from, to }) => from <= at && at < to)
  return typed.tokens.flatMap(({ kind, text, from, to }, at) => {
    if (kind === 'sign' || isUsed(at)) return []
    const bit = unusedBit(at)
    // That it was today is so where nothing is said.
    if (bit?.kind === 'date' && bit.text === 'today') return []
    // Said in other words.
    if (bit?.role === 'gone' && bit.kind !== 'plant' && bit.isJarSize !== true) return []
    const shown = typed.text.slice(from, to)
    if (bit !== undefined) return bit.from === at ? [typed.text.slice(from, typed.tokens[bit.to - 1]!.to)] : []
    if (kind === 'number') return [shown]
    if (SAYS_SOMETHING.test(text) || isOtherDeed(at)) return [shown]
    if (fillers.has(text) || isPhrase(at) || text.length < 2) return []
    if (isWhereFrom(typed, at)) return []
    // Who a bottle went to is no part of the count.
    if (cues.includes('gave_away') && isPerson(text)) return []
    if (AS_IT_IS.test(text) && isBesideUsed(at, used)) return []
    if (between.has(text) && !loose.has(text)) return []
    return loose.has(text) && isNextToUsed(at, used) ? [] : [shown]
  })
}

/** Deeds of which one is left out where another is read; what is added is said of amounts, too. */
const OTHER_DEEDS: ReadonlySet<Concept> = new Set([...DEEDS].filter((deed) => deed !== 'added'))

/** Said beside a name, and of no weight in the reckoning; named all the same. */
const SAYS_SOMETHING = /^(?:organic|unwaxed|untreated|homemade|wild|foraged|bio|biologic[oaie])$/

/** How what is read came to be as it is: `once washed`, `an open bottle`. */
const AS_IT_IS =
  /^(?:once|washed|rinsed|scrubbed|cleaned|wiped|pitted|hulled|topped|juicy|plump|lovely|open|opened|unopened|part|used|lavat[oaie]|puli?t[oaie]|aperta|aperto)$/

const BESIDE = 2

const isBesideUsed = (at: number, used: readonly Bit[]): boolean =>
  used.some(({ from, to }) => (from > at && from - at <= BESIDE) || (to <= at && at - to <= BESIDE))

/** `bunch of basil`: the piece is in the text that is used. */
const isNextToUsed = (at: number, used: readonly Bit[]): boolean =>
  used.some(({ loose, from }) => loose !== undefined && from > at && from - at <= 3)
