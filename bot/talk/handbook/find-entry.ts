import type { Handbook, HandbookId } from '../../text/messages/handbook.ts'
import { type AskedIndex, indexOf, wideIndexOf } from './handbook-index.ts'
import { otherMatters } from './other-matters.ts'
import { FRUIT, plantTerms, termsOf } from './terms.ts'

export interface FoundEntry {
  readonly id: HandbookId
  /** How much of the sentence the entry explains, 0 to 1. */
  readonly share: number
  /** How likely it is the one among all, 0 to 1. */
  readonly likelihood: number
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

/** What it counts beside these how likely the entry is by all words of the sentence, as a logarithm, none of them less than so likely. */
const LIKELIHOOD = 0.06
const LEAST_LIKELY = 0.01

/** One that is less likely is no answer, however much it explains: its words come from ways that have nothing to do with each other. */
const UNLIKELY = 0.03

/** What a word of the sentence counts that only the answer has, beside one of its ways. */
const IN_ANSWER = 0.5

/** So many of a way's words, as a share, have to stand in a sentence that has only one telling word in common with the entry. */
const NEARLY_WHOLE = 0.6

/** One telling word is enough where it is all that a way of asking has, and nearly all of a whole sentence is explained. */
const NEARLY_ALL = 0.85
const LEAST_WORDS = 3
const MOST_WORDS = 6

/** What a plant counts that an entry has no way of asking for, beside another word. */
const OF_PLANT = 0.35

/** What a word of other matters counts that an entry has no way of asking for, beside what it weighs anyway. */
const OF_OTHER_MATTERS = 2

/** Entries whose ranks are nearer than this are even. */
const EVEN = 0.01

/** `What if I only have vodka?` asks for another plan. */
const SPIRITS: ReadonlySet<string> = new Set(termsOf('vodka alcohol spirit gin rum grappa whisky wine'))

/** An entry that explains every word of a question stands before one that only ranks a little above it, and is none. */
const WHOLE = 0.985
const NEAR = 0.15

const MOST_OTHERS = 3

/** The entries of an index by how well they explain a sentence, the best first; of the handbook any plant may be fruit, and one word may do. */
export const judged = <Id extends string>(index: AskedIndex<Id>, text: string, isHandbook = false) => {
  const said = termsOf(text)
  const terms = [...new Set(said)]
  const plants = isHandbook ? plantTerms(text) : []
  const weightOf = (of: readonly string[]): number => of.reduce((sum, term) => sum + index.weight(term), 0)
  const foreign = terms.filter((term) => otherMatters.has(term))
  const isAWay = (entry: Id): boolean =>
    index.ways(entry).some((way) => way.filter((term) => terms.includes(term)).length >= NEARLY_WHOLE * way.length)
  const likelihoods = index.likelihoods(terms)
  const weight = weightOf(terms)
  const tells = new Set(terms.filter((term) => !index.isSmall(term)))
  const ofTheTrade = new Set(terms.filter(index.isOfTheTrade))
  return [...index.fits(plants.length > 0 ? [...terms, FRUIT] : terms)]
    .map(([id, fit]) => {
      // Of `do i wash the damsons` the plant is any fruit, where an entry speaks of fruit.
      const others = plants.filter((term) => !index.asks(id, term))
      const asFruit = index.asks(id, FRUIT) ? others : []
      const explained = terms.filter((term) => index.asks(id, term) || asFruit.includes(term))
      const answered = terms.filter((term) => !explained.includes(term) && index.answers(id, term))
      const spared = (1 - OF_PLANT) * weightOf(others)
      const astray = OF_OTHER_MATTERS * weightOf(foreign.filter((term) => !index.asks(id, term)))
      const share =
        (weightOf(explained) - (1 - OF_PLANT) * weightOf(asFruit) + IN_ANSWER * weightOf(answered)) /
        (weight - spared + astray)
      // A plant that is but any fruit tells nothing of what is asked.
      const telling = explained.filter((term) => tells.has(term) && !asFruit.includes(term))
      const isOwn =
        share >= NEARLY_ALL &&
        telling.some((term) => !plants.includes(term) && !SPIRITS.has(term) && index.isWay(id, term))
      const isWhole = isHandbook && said.length >= LEAST_WORDS && said.length <= MOST_WORDS
      const isEnough = telling.length > 1 || (isOwn && isWhole)
      const bar = explained.some((term) => ofTheTrade.has(term)) ? BAR.ofTheTrade : BAR.other
      const likelihood = likelihoods.get(id) ?? 0
      const rank = share + BEST_WAY * fit + LIKELIHOOD * Math.log(likelihood + LEAST_LIKELY)
      return {
        id,
        share,
        likelihood,
        rank,
        isOverBar: share >= bar && (isEnough || isAWay(id)),
      }
    })
    .sort((one, other) => other.rank - one.rank)
}

const foundAs = ({ id, share, likelihood }: Omit<FoundEntry, 'others'>) => ({ id, share, likelihood })

/**
 * The entry that a question is answered with, or null where none explains enough of it. Words that no entry knows count in
 * full, so that a sentence of something else finds nothing; spelling is taken as it is.
 */
export function findEntry(text: string, handbook: Handbook): FoundEntry | null {
  const entries = judged(indexOf(handbook), text, true)
  const [first] = entries
  const over = entries.filter(({ isOverBar }) => isOverBar)
  const likely = over.filter(({ likelihood }) => likelihood >= UNLIKELY)
  const best =
    likely.find(({ rank }) => rank >= first!.rank - EVEN) ??
    likely.find(({ rank, share }) => share >= WHOLE && rank >= first!.rank - NEAR)
  if (best === undefined) return null
  const others = over.filter((each) => each !== best)
  return { ...foundAs(best), others: others.slice(0, MOST_OTHERS).map(({ id }) => id) }
}

/** An entry among all, by how well it explains a question. */
export interface RankedEntry {
  readonly id: HandbookId
  readonly rank: number
  readonly share: number
  readonly likelihood: number
}

/** So many of them are of use. */
const MOST_RANKED = 10

/** The entries that come nearest to a question, the nearest first, whether or not they are over the bar. */
export const rankEntries = (text: string, handbook: Handbook): readonly RankedEntry[] =>
  judged(wideIndexOf(handbook), text, true)
    .slice(0, MOST_RANKED)
    .map(({ id, rank, share, likelihood }) => ({ id, rank, share, likelihood }))
