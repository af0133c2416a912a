import { withoutMarks } from '../lexicon/plain-text.ts'

/** An entry of the handbook, by its id, and others that are near. */
export interface EntryFound {
  readonly id: string
  readonly others: readonly string[]
  /** How much of the sentence it explains, 0 to 1. */
  readonly share: number
  /** How likely it is the one among all, 0 to 1. */
  readonly likelihood: number
}

/** Finds it; null where none is near enough. */
export type FindEntry = (text: string) => EntryFound | null

/** One among all entries, by how well it explains a text. */
export type EntryRanked = Omit<EntryFound, 'others'> & { readonly rank: number }

/** Those that come nearest, the nearest first, whether or not they explain enough. */
export type RankEntries = (text: string) => readonly EntryRanked[]

interface Finds {
  readonly findEntry: FindEntry
  readonly rankEntries: RankEntries
}

/** Where one clause ends and a reason, an aside or another sentence begins. */
const CLAUSES =
  /[.;!?:]+(?=\s|$)|,? (?:but|because|since|as i|as my|so that|so|and now|now|ma|pero|perché|perche|poiché|siccome|dato che|visto che|quindi|allora|e ora)(?= )|, /iu

/** How a clause begins that asks something of the handbook. */
const ASKS =
  /^(?:so |and |or |then |well |please |i wonder (?:whether |if )?|i was wondering (?:whether |if )?|do you know (?:whether |if )?|can you tell me (?:whether |if )?|could you tell me (?:whether |if )?|tell me (?:whether |if )?|e |ma |allora |mi chiedo se |sa(?:i|pete) se )*(?:how|what|whats|which|whichs|why|when|where|who|do|does|is|are|can|could|may|might|will|would|should|shall|must|whether|if one|one may|come|cosa|che|quale|quali|quanto|quanta|quando|perche|dove|posso|possiamo|si puo|si deve|devo|dobbiamo|bisogna|va|vanno|e meglio|conviene|serve)\b/u

const LEAST_WORDS = 4
const LEAST_OF_SENTENCE = 10

/** Told of the plants, it is no aside, whatever is asked then. */
const CHANGES_ALL =
  /\b(?:treated|sprayed|chemicals?|pesticides?|fungicides?|imazalil|mould\p{L}*|rotten|trattat\p{L}*|spruzzat\p{L}*|ammuffit\p{L}*|marc[ei]\p{L}*)\b/iu

/** What a clause explains tells a little less than what the whole sentence does. */
const OF_A_PART = 0.95

/** What stands before the entry of a clause by so much in the whole sentence is what is asked for. */
const BEHIND = 0.25

/** What the whole is found by stands, unless a clause tells so much more. */
const MUCH_BETTER = 0.25

/** By all ways of asking: how likely it has to be, what it has to explain, how far before what was found, and how unlikely that is. */
const LIKELIER = { likelihood: 0.9, share: 0.7, ahead: 0.15, unlikely: 0.05 } as const

/** What was found by few ways of asking gives way to what is far likelier by all of them. */
function orLikelier(found: EntryFound | null, ranked: () => readonly EntryRanked[]): EntryFound | null {
  if (found === null || found.likelihood > LIKELIER.likelihood) return found
  const [first, ...others] = ranked()
  if (first === undefined || first.id === found.id) return found
  if (first.likelihood < LIKELIER.likelihood || first.share < LIKELIER.share) return found
  const own = others.find(({ id }) => id === found.id)
  if ((own?.likelihood ?? 0) > LIKELIER.unlikely || first.rank - (own?.rank ?? 0) < LIKELIER.ahead) return found
  return { ...first, others: [found.id, ...found.others].filter((id) => id !== first.id) }
}

const wordsIn = (text: string): number => text.split(/\s+/).filter((word) => word !== '').length

/**
 * The entry that a long sentence asks for: by the whole of it, or by the clause that asks, with what is told before and behind it left
 * aside. Null where neither finds one.
 */
export function entryOfClause(text: string, { findEntry, rankEntries }: Finds): EntryFound | null {
  const whole = orLikelier(findEntry(text), () => rankEntries(text))
  if (wordsIn(text) < LEAST_OF_SENTENCE || CHANGES_ALL.test(text)) return whole
  const clauses = text
    .split(CLAUSES)
    .map((clause) => clause.trim())
    .filter((clause) => wordsIn(clause) >= LEAST_WORDS && ASKS.test(withoutMarks(clause).toLowerCase()))
  const found = clauses
    .flatMap((clause) => findEntry(clause) ?? [])
    .map((entry) => ({ ...entry, share: OF_A_PART * entry.share }))
    .toSorted((one, other) => other.share - one.share)[0]
  const isClause = found !== undefined && (whole === null || found.share > whole.share + MUCH_BETTER)
  return isClause ? asOfWhole(found, rankEntries(text)) : whole
}

/** `Is honey possible and not sugar? How many for 500 g of sugar`: a clause tells that something is asked, the whole of what. */
function asOfWhole(found: EntryFound, ranked: readonly EntryRanked[]): EntryFound {
  const [first] = ranked
  const own = ranked.find(({ id }) => id === found.id)?.rank ?? 0
  if (first === undefined || first.rank - own <= BEHIND) return found
  return { ...found, id: first.id, others: [found.id, ...found.others].filter((id) => id !== first.id) }
}
