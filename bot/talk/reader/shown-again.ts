import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarCalled } from '../bits/jars-of.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'
import { callReading } from '../memory/rule.ts'

/** `Make it again but better`, `rifacciamolo`: the same once more, and nothing said that changes it. */
const ONCE_MORE =
  /^(?:(?:please|ok|so|can (?:i|we)|could (?:i|we)|lets|let us|i want to|i would like to|we should|id like to|e|ma) )*(?:(?:make|do|brew|try) (?:it|that|this|that one|this one|another|another one|the same|one like it)(?: one| batch| jar)?(?: (?:all over )?again| once more)?|rifall[oa]|rifacciamol[oa]|fall[oa] di nuovo|rifarl[oa])(?: (?:but|only|just|and|this time|next time|please|better|properly|right|nicer|ma|meglio|stavolta|per favore))*$/u
const AGAIN = /\b(?:again|once more|another|one like it|the same|rif\p{L}+|di nuovo)\b/u

/** Of a jar that was just shown, whatever stage it is at: the batch once more. Null for everything else. */
export function shownAgain({ bits, typed, jars }: Sentence, { call, question }: Remembered): TalkReading | null {
  const jar = call?.command === 'jar show' ? jarCalled(call.options.jar, jars) : undefined
  const words = wordsAlone(typed)
  if (jar === undefined || question !== null || bits.length > 0 || !ONCE_MORE.test(words) || !AGAIN.test(words))
    return null
  return callReading({ command: 'again', options: { jar: jar.name } })
}
