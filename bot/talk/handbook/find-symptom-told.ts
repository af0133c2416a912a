import { lazily } from '../../../core/once.ts'
import { type SymptomId, symptomIds, symptoms } from '../../../core/trouble/symptoms.ts'
import { judged } from './find-entry.ts'
import { askedIndex } from './handbook-index.ts'
import { symptomsByStrangers } from './symptoms-by-strangers.ts'
import { symptomsTold } from './symptoms-told.ts'

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

/** The words of all ways of telling, as they are spelt. */
export const wordsOfSymptoms = (): ReadonlySet<string> => index().words
