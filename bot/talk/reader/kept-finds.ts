import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import type { FindEntry, RankEntries } from './entry-of-clause.ts'
import type { FindSymptom, SymptomFound } from './symptom-reading.ts'

/** What is looked up for a text, or a part of it. */
export interface FindsInText {
  readonly findEntry: FindEntry
  /** The same with slips of the pen mended: of what nothing else has understood. */
  readonly findRespelt: FindEntry
  /** The nearest, though they explain less than an answer has to: of what is surely a question of the handbook. */
  readonly rankEntries: RankEntries
  /** What is told to have gone wrong, of what nothing else has understood. */
  readonly findSymptom: FindSymptom
  /** The nearest, of what surely tells of one. */
  readonly findLikelySymptom: FindSymptom
  /** The one that is far likelier told than another that a word or two spoke for. */
  readonly findLikelierSymptom: (text: string, than: SymptomId) => SymptomFound | null
}

function kept<Found>(find: (text: string) => Found): (text: string) => Found {
  const answers = new Map<string, { readonly found: Found }>()
  return (text) => {
    const answer = answers.get(text) ?? { found: find(text) }
    answers.set(text, answer)
    return answer.found
  }
}

/** The same, each text looked up once: a sentence is read in several ways, and asked for the same entry by each. */
export const keptFinds = ({
  findEntry,
  findRespelt,
  rankEntries,
  findSymptom,
  findLikelySymptom,
  findLikelierSymptom,
}: FindsInText): FindsInText => ({
  findEntry: kept(findEntry),
  findRespelt: kept(findRespelt),
  rankEntries: kept(rankEntries),
  findSymptom: kept(findSymptom),
  findLikelySymptom: kept(findLikelySymptom),
  findLikelierSymptom,
})
