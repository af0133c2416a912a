import type { FindEntry } from './entry-of-clause.ts'
import type { FindSymptom } from './symptom-reading.ts'

interface Finds {
  readonly findEntry: FindEntry
  readonly findRespelt: FindEntry
  readonly findLikely: FindEntry
  readonly findSymptom: FindSymptom
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
export const keptFinds = ({ findEntry, findRespelt, findLikely, findSymptom }: Finds): Finds => ({
  findEntry: kept(findEntry),
  findRespelt: kept(findRespelt),
  findLikely: kept(findLikely),
  findSymptom: kept(findSymptom),
})
