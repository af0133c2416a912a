import { isOfTaste } from '../../../core/trouble/rows.ts'
import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { symptomIn } from '../frames/symptoms.ts'
import { ofMeantJar } from './spoken-of.ts'
import { symptomReading } from './symptom-reading.ts'

/** `Strained it, gone slimy, undo it`: what is wrong is answered, no deed beside it is written down and none is taken back. */
export function troubleNotUndone(sentence: Sentence, knows: Parameters<typeof ofMeantJar>[2]): TalkReading | null {
  if (!sentence.has('take_back')) return null
  const found = symptomIn(sentence)
  return found === null || isOfTaste(found.id) ? null : ofMeantJar(symptomReading(sentence, found.id), sentence, knows)
}
