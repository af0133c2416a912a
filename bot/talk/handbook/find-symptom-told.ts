import { lazily } from '../../../core/once.ts'
import { type SymptomId, symptomIds, symptoms } from '../../../core/trouble/symptoms.ts'
import { judged } from './find-entry.ts'
import { askedIndex } from './handbook-index.ts'
import { symptomsByStrangers } from './symptoms-by-strangers.ts'
import { symptomsTold } from './symptoms-told.ts'
import { termsOf } from './terms.ts'

/** One word alone, such as `diluted`, tells as often what was done. */
const waysOf = (id: SymptomId): readonly string[] =>
  [...symptoms[id].en, ...symptoms[id].it, ...symptomsTold[id].split('; ')].filter((way) => way.includes(' '))

/** Made when it is asked for first: most sentences are understood without. */
const indexBy = (ways: (id: SymptomId) => readonly string[]) =>
  lazily(() =>
    askedIndex(
      symptomIds.flatMap((entry) => ways(entry).map((asked) => ({ entry, asked }))),
      () => '',
    ),
  )

const index = indexBy(waysOf)

/** With the ways of strangers: of what surely tells that something went wrong. */
const wideIndex = indexBy((id) => [...waysOf(id), ...symptomsByStrangers[id].split('; ')])

/** How much more than the next a symptom has to explain: two that are as near are asked about, not guessed. */
const AHEAD = 0.05

/**
 * What is told to have gone wrong, where no rule knew its words: the symptom whose ways of telling explain enough of the
 * sentence, null where none does. Words that no way has count in full.
 */
export function findSymptomTold(text: string): { readonly id: SymptomId; readonly share: number } | null {
  const [best, next] = judged(index(), text)
  if (best === undefined || !best.isOverBar) return null
  return next?.isOverBar && best.rank - next.rank < AHEAD ? null : { id: best.id, share: best.share }
}

/** How likely it has to be. */
const LIKELY = 0.3

/** The symptom that comes nearest to what surely tells of one, where it stands before the next. */
export function findLikelySymptom(text: string): { readonly id: SymptomId; readonly share: number } | null {
  const [best, next] = judged(wideIndex(), text)
  if (best === undefined || best.likelihood < LIKELY || best.rank - (next?.rank ?? 0) < AHEAD) return null
  return { id: best.id, share: best.share }
}

/** How near a trouble has to come, how likely it has to be, and how far before the other, to stand in for what a word or two told. */
const MUCH_LIKELIER = { rank: 1, likelihood: 0.95, ahead: 0.35 } as const

/** Whether a text says a telling word of its name: `sweet`, `brown`. */
const isNamed = (id: SymptomId, text: string): boolean => {
  const said = new Set(termsOf(text))
  return termsOf(symptoms[id].en[0]!).some((term) => !index().isSmall(term) && said.has(term))
}

/**
 * The symptom that strangers tell in such words, where it is far likelier than the one that a word or two spoke for: `a lump of jelly you
 * could stand a spoon in` is no sweetness. Null where it is not, or the other is named outright.
 */
export function findLikelierSymptom(
  text: string,
  than: SymptomId,
): { readonly id: SymptomId; readonly share: number } | null {
  const ranked = judged(wideIndex(), text)
  const [best] = ranked
  const other = ranked.find(({ id }) => id === than)
  if (best === undefined || best.id === than || isNamed(than, text)) return null
  if (best.rank < MUCH_LIKELIER.rank || best.likelihood < MUCH_LIKELIER.likelihood) return null
  return best.rank - (other?.rank ?? 0) < MUCH_LIKELIER.ahead ? null : { id: best.id, share: best.share }
}

/** The words of all ways of telling, as they are spelt. */
export const wordsOfSymptoms = (): ReadonlySet<string> => index().words
