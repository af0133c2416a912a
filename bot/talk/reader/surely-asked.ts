import type { Path } from '../../calls/signatures.ts'
import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { isOwnTrouble, MAY_BURST } from './asked-of-handbook.ts'
import type { RankEntries } from './entry-of-clause.ts'
import { isAsked } from './is-told.ts'
import { topic } from './read-otherwise.ts'

/** What an entry has to explain of a question, how likely it has to be among all, and how far before the next, to be surely what is asked. */
const SURELY = { share: 0.85, likelihood: 0.95, ahead: 0.3 } as const

/** Commands that a plant, a strength or a name alone may call up. */
const BY_LITTLE: ReadonlySet<Path> = new Set(['botanical', 'cautions', 'mix', 'jar later'])

/** What only a computation answers. */
const OF_AMOUNT = ['how_much', 'per_litre', 'how_long', 'when_take_out', 'tell_me_about'] as const

/** An order of words that asks, before anything is told or of people in general: `last year it browned, how do people keep it green`. */
const ASKS_FIRST =
  /^[^,.;:]*\b(?:(?:is|are|can|could|do|does|will|would|should|shall|must) (?:it|they|i|we|you|people|an?|the|some|any)|how|what|which|why|when)\b|\b(?:do|does|can|should) (?:people|one|others|anyone|everyone)\b/iu

/** Whether it rests on little: a symptom that is asked about and not told of one’s own, or a command with one thing of the sentence. */
function restsOnLittle(reading: TalkReading, sentence: Sentence, text: string): boolean {
  if (reading.kind === 'symptom')
    return (
      reading.options.jar === undefined &&
      !MAY_BURST.has(reading.id) &&
      ASKS_FIRST.test(text) &&
      !isOwnTrouble(sentence, text)
    )
  if (reading.kind !== 'call' && reading.kind !== 'question') return false
  const { command, options } = reading.call
  return BY_LITTLE.has(command) && Object.keys(options).length <= 1 && !sentence.has(...OF_AMOUNT)
}

/** The entry that is surely asked for; null where none is as sure as that. */
export function surelyFound(text: string, rankEntries: RankEntries): TalkReading | null {
  const [first, next] = rankEntries(text)
  if (first === undefined || first.share < SURELY.share || first.likelihood < SURELY.likelihood) return null
  return first.rank - (next?.rank ?? 0) < SURELY.ahead ? null : topic({ id: first.id, others: [] })
}

/**
 * `Will bourbon work with cherries?`, `would a pinch of citric acid help?`: what strangers ask of the handbook in nearly all of its words
 * goes before a plant that is only named and a fault that is only supposed. Null where no entry is as sure as that.
 */
export const surelyAsked = (
  reading: TalkReading,
  sentence: Sentence,
  text: string,
  rankEntries: RankEntries,
): TalkReading | null =>
  restsOnLittle(reading, sentence, text) && (isAsked(sentence) || ASKS_FIRST.test(text))
    ? surelyFound(text, rankEntries)
    : null
