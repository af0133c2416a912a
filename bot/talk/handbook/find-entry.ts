import type { Handbook, HandbookId } from '../../text/messages/handbook.ts'
import { type AskedIndex, indexOf } from './handbook-index.ts'
import { termsOf } from './terms.ts'

export interface FoundEntry {
  readonly id: HandbookId
  /** How much of the sentence the entry explains, 0 to 1. */
  readonly share: number
  /** Others that are over the bar, the nearest first. */
  readonly others: readonly HandbookId[]
}

/**
 * The share of a sentence that an entry has to explain to be an answer, by whether a word of the trade is among what it
 * explains: one rare word that fits is mostly chance. Measured on half of the sentences that must not be answered.
 */
const BAR = { ofTheTrade: 0.45, other: 0.7 } as const

/** What the best way of an entry counts beside the share that all its ways explain together. */
const BEST_WAY = 0.5

/** What a word of the sentence counts that only the answer has, beside one of its ways. */
const IN_ANSWER = 0.5

/** So many of a way's words, as a share, have to stand in a sentence that has only one telling word in common with the entry. */
const NEARLY_WHOLE = 0.6

const MOST_OTHERS = 3

/** The entries of an index by how well they explain a sentence, the best first. */
export const judged = <Id extends string>(index: AskedIndex<Id>, text: string) => {
  const terms = [...new Set(termsOf(text))]
  const weightOf = (of: readonly string[]): number => of.reduce((sum, term) => sum + index.weight(term), 0)
  const whole = weightOf(terms)
  const isAWay = (entry: Id): boolean =>
    index.ways(entry).some((way) => way.filter((term) => terms.includes(term)).length >= NEARLY_WHOLE * way.length)
  return [...index.fits(terms)]
    .map(([id, fit]) => {
      const explained = terms.filter((term) => index.asks(id, term))
      const answered = terms.filter((term) => !index.asks(id, term) && index.answers(id, term))
      const share = (weightOf(explained) + IN_ANSWER * weightOf(answered)) / whole
      const isEnough = explained.filter((term) => !index.isSmall(term)).length > 1
      const bar = explained.some(index.isOfTheTrade) ? BAR.ofTheTrade : BAR.other
      return { id, share, rank: share + BEST_WAY * fit, isOverBar: share >= bar && (isEnough || isAWay(id)) }
    })
    .sort((one, other) => other.rank - one.rank)
}

/**
 * The entry that a question is answered with, or null where none explains enough of it. Words that no entry knows count in
 * full, so that a sentence of something else finds nothing; spelling is taken as it is.
 */
export function findEntry(text: string, handbook: Handbook): FoundEntry | null {
  const entries = judged(indexOf(handbook), text)
  const [best] = entries
  if (best === undefined || !best.isOverBar) return null
  const others = entries.slice(1).filter(({ isOverBar }) => isOverBar)
  return { id: best.id, share: best.share, others: others.slice(0, MOST_OTHERS).map(({ id }) => id) }
}
