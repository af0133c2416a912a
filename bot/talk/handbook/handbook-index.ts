import MiniSearch from 'minisearch'
import { once } from '../../../core/once.ts'
import { plainWords } from '../../../core/spelling/normalise-name.ts'
import type { Handbook, HandbookEntry, HandbookId } from '../../text/messages/handbook.ts'
import { softmax } from '../hunch/softmax.ts'
import { askedByStrangers } from './asked-by-strangers.ts'
import { askedInItalian } from './asked-in-italian.ts'
import { askedOtherwise } from './asked-otherwise.ts'
import { smallWords } from './small-words.ts'
import { termsOf } from './terms.ts'

/** One way in which an entry is asked. */
interface Way<Id> {
  readonly entry: Id
  readonly asked: string
}

/** A term that stands in this many entries is a word of the trade: `jar`, `syrup`, `peel`. */
const TRADE_ENTRIES = 5

/** What a small word counts beside a word that stands in every entry. Measured on the sentences written for it. */
const SMALL_WEIGHT = 0.05

const smallTerms: ReadonlySet<string> = new Set([...smallWords].flatMap(termsOf))

/** Words that are spread over the entries as in the whole handbook, added to those of each: the more, the less a rare one decides. */
const SPREAD_WORDS = 100

/** A number tells how much, not what. */
const isSmall = (term: string): boolean => smallTerms.has(term) || /\d/.test(term)

const waysOf = ([id, { title, asked }]: [string, HandbookEntry]): readonly Way<HandbookId>[] => {
  const entry = id as HandbookId
  const others = [askedInItalian[entry], askedOtherwise[entry]].flatMap((ways) => ways?.split('; ') ?? [])
  return [title, ...asked, ...others].map((way) => ({ entry, asked: way }))
}

export interface AskedIndex<Id> {
  /** The entries that share a term with these, each with how near its nearest way is, 0 to 1, where 1 is the nearest of all. */
  fits(terms: readonly string[]): ReadonlyMap<Id, number>
  /**
   * How likely each entry is meant, all adding up to 1, if its words come as often as in its ways (naive Bayes): what all of a sentence
   * speaks for, small words too.
   */
  likelihoods(terms: readonly string[]): ReadonlyMap<Id, number>
  /** The terms of each way in which it is asked. */
  ways(entry: Id): readonly (readonly string[])[]
  /** Whether a way in which it is asked, or its title, has the term. */
  asks(entry: Id, term: string): boolean
  /** Whether its answer has the term. */
  answers(entry: Id, term: string): boolean
  /** How much a term tells of what is asked; one that no entry knows as much as one that a single entry knows. */
  weight(term: string): number
  isSmall(term: string): boolean
  /** Whether it is the one telling term of a way in which the entry is asked. */
  isWay(entry: Id, term: string): boolean
  isOfTheTrade(term: string): boolean
  /** The words of all ways as they are spelt. */
  readonly words: ReadonlySet<string>
}

/** How many words there are, of each entry, of each term, and of each term in each entry. */
function countedIn<Id>(ways: readonly (readonly [Id, ReadonlySet<string>])[]) {
  const ofEntry = new Map<Id, number>()
  const ofTerm = new Map<string, number>()
  const inEntry = new Map<Id, Map<string, number>>()
  let all = 0
  for (const [entry, terms] of ways) {
    const own = inEntry.get(entry) ?? new Map<string, number>()
    inEntry.set(entry, own)
    for (const term of terms) {
      own.set(term, (own.get(term) ?? 0) + 1)
      ofTerm.set(term, (ofTerm.get(term) ?? 0) + 1)
    }
    ofEntry.set(entry, (ofEntry.get(entry) ?? 0) + terms.size)
    all += terms.size
  }
  return { all, ofEntry, ofTerm, inEntry }
}

/** The index of these ways; `answerOf` gives what else tells of an entry. */
export function askedIndex<Id extends string>(
  ways: readonly Way<Id>[],
  answerOf: (entry: Id) => string,
): AskedIndex<Id> {
  const search = new MiniSearch<Way<Id> & { readonly id: number }>({
    fields: ['asked'],
    storeFields: ['entry'],
    tokenize: (text) => [...termsOf(text)],
    processTerm: (term) => term,
    searchOptions: { tokenize: (terms) => terms.split(' ') },
  })
  search.addAll(ways.map((way, id) => ({ ...way, id })))

  const termsOfWays = new Map<Id, string[][]>()
  for (const { entry, asked } of ways) {
    termsOfWays.set(entry, [...(termsOfWays.get(entry) ?? []), [...termsOf(asked)]])
  }
  const termsOfEntry = new Map([...termsOfWays].map(([entry, of]) => [entry, new Set(of.flat())]))
  const termsOfAnswer = new Map([...termsOfWays.keys()].map((entry) => [entry, new Set(termsOf(answerOf(entry)))]))
  const entriesWith = new Map<string, number>()
  for (const terms of termsOfEntry.values()) {
    for (const term of terms) entriesWith.set(term, (entriesWith.get(term) ?? 0) + 1)
  }

  const times = countedIn(ways.map(({ entry, asked }) => [entry, new Set(termsOf(asked))]))

  const entries = [...times.ofEntry.keys()]
  const tellings = new Map<string, readonly number[]>()

  /** How much a term speaks for each entry, as a logarithm, in their order, worked out once; null for a term of none. */
  function tellsOf(term: string): readonly number[] | null {
    const known = tellings.get(term)
    const all = times.ofTerm.get(term)
    if (known !== undefined || all === undefined) return known ?? null
    const usual = all / times.all
    const made = [...times.ofEntry].map(([entry, words]) =>
      Math.log(((times.inEntry.get(entry)!.get(term) ?? 0) / usual + SPREAD_WORDS) / (words + SPREAD_WORDS)),
    )
    tellings.set(term, made)
    return made
  }

  const single = new Map(
    [...termsOfWays].map(([entry, of]) => {
      const telling = of.map((terms) => terms.filter((term) => !isSmall(term)))
      return [entry, new Set(telling.filter(({ length }) => length === 1).flat())] as const
    }),
  )

  return {
    fits(terms) {
      const telling = terms.filter((term) => !isSmall(term))
      const found = search.search((telling.length > 0 ? telling : terms).join(' '))
      const best = found[0]?.score ?? 1
      const fits = new Map<Id, number>()
      // The nearest way of an entry comes first.
      for (const { entry, score } of found) if (!fits.has(entry)) fits.set(entry, score / best)
      return fits
    },
    likelihoods(terms) {
      const scores = entries.map(() => 0)
      for (const term of terms)
        tellsOf(term)?.forEach((telling, at) => {
          scores[at]! += telling
        })
      const shares = softmax(scores)
      return new Map(entries.map((entry, at) => [entry, shares[at]!]))
    },
    ways: (entry) => termsOfWays.get(entry) ?? [],
    asks: (entry, term) => termsOfEntry.get(entry)?.has(term) ?? false,
    answers: (entry, term) => termsOfAnswer.get(entry)?.has(term) ?? false,
    weight: (term) => (isSmall(term) ? SMALL_WEIGHT : Math.log(1 + termsOfEntry.size / (entriesWith.get(term) ?? 1))),
    isSmall,
    isWay: (entry, term) => single.get(entry)?.has(term) ?? false,
    isOfTheTrade: (term) => !isSmall(term) && (entriesWith.get(term) ?? 0) >= TRADE_ENTRIES,
    words: new Set(ways.flatMap(({ asked }) => plainWords(asked))),
  }
}

const indexBy = (ways: (handbook: Handbook) => readonly Way<HandbookId>[]) =>
  once((handbook: Handbook): AskedIndex<HandbookId> => askedIndex(ways(handbook), (entry) => handbook[entry].text))

const ownWays = (handbook: Handbook) => Object.entries(handbook).flatMap(waysOf)

/** Made once for each handbook. */
export const indexOf = indexBy(ownWays)

/** With the ways of strangers, whose many words speak for sentences of something else too: of what is surely asked of the handbook. */
export const wideIndexOf = indexBy((handbook) => [
  ...ownWays(handbook),
  ...Object.entries(askedByStrangers).flatMap(([entry, ways]) =>
    ways.split('; ').map((asked) => ({ entry: entry as HandbookId, asked })),
  ),
])
