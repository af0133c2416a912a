import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { begun } from './begun.ts'
import { isGoAhead } from './go-ahead.ts'
import { lookedBack } from './look-back.ts'
import type { Remembered } from './remembered.ts'
import { isOnly } from './step-rules.ts'

/** Whether a sentence would begin what was planned before the recipe that was refused. */
function beginsOlder(sentence: Sentence, said: Remembered): boolean {
  const { call } = said
  if (isGoAhead(sentence)) return !isOnly(sentence.typed, sentence.spans, 'done_word')
  const reading = (call === null ? null : begun(sentence, call, said)) ?? lookedBack(sentence, said)
  return (reading?.kind === 'call' || reading?.kind === 'question') && reading.call.command === 'jar start'
}

/** `Start it` behind a recipe that was refused or not read: what was said of that one once more, and no older plan is begun. */
export function ofDeclined(sentence: Sentence, said: Remembered): TalkReading | null {
  const { declined } = said
  return declined !== null && beginsOlder(sentence, said) ? declined : null
}
