import { type SymptomId, symptoms } from '../../../core/trouble/symptoms.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarsMeant } from '../frames/jars-meant.ts'
import type { TalkReading } from '../frames/reading.ts'
import { isAsked } from './is-told.ts'
import { isOfGarden } from './small-talk.ts'

/** What grows in fur, or is to be lifted off: no pith and no pectin. */
const FURRY =
  /\b(?:fuzz\p{L}*|furry|fur|hairy|fluffy|cottony|scoop\p{L}*|skim\p{L}*|pelos[oaie]|peluria|lanugin\p{L}*|pelliccia)(?!\p{L})/iu

/** The jar that it is about, where one is named, and what the sentence tells of it. */
export function symptomReading(sentence: Sentence, id: SymptomId): TalkReading {
  const { bits, has } = sentence
  const { text } = has('own_jar') ? jarsMeant(sentence, 'jar show') : { text: null }
  const strength = bits.find(({ kind, role }) => kind === 'strength' && role === 'have')
  const sweetness = bits.find(({ kind, role }) => kind === 'sweetness' && role === 'have')
  const options = {
    symptom: symptoms[id].en[0]!,
    ...(text !== null && { jar: text }),
    ...(id === 'mould' && FURRY.test(sentence.typed.text) && { yes: 'growth' }),
    ...(text === null && strength !== undefined && { strength: strength.text }),
    ...(text === null && sweetness !== undefined && { sweetness: sweetness.text }),
  }
  return { kind: 'symptom', id, options }
}

/** A trouble, and how much of the sentence it explains, 0 to 1. */
export interface SymptomFound {
  readonly id: SymptomId
  readonly share: number
}

export type FindSymptom = (text: string) => SymptomFound | null

/** What is told to have gone wrong; a question of what may be is no trouble. */
export const symptomTold = (sentence: Sentence, text: string, find: FindSymptom): SymptomFound | null =>
  isAsked(sentence) || isOfGarden(sentence) ? null : find(text)
