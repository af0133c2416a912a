import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { runningAmong } from '../bits/jars-of.ts'
import type { SlotFilled } from './plant-slots.ts'

const NOT_NOW =
  /\b(?:not (?:just |right )?now|(?:im|i am|too|bit) busy|no time (?:now|right)|(?:cant|cannot) do (?:it|that|this) (?:now|right)|havent got time|non (?:adesso|ora)|(?:adesso|ora) non posso|sono occupat[oa]|non ho tempo)\b/

/** `Not now, I’m busy`: what was just asked is put off, until later in the day. */
export const isNotNow = ({ typed, has }: Sentence): boolean => has('put_off') && NOT_NOW.test(wordsFrom(typed))

/** The same of all that run, where none is named; null where one is, or where there is one only. */
export function allPutOff(sentence: Sentence, command: string): SlotFilled | null {
  const isNamed = sentence.bits.some(({ kind }) => kind === 'jar' || kind === 'plant')
  if (command !== 'jar later' || isNamed || !isNotNow(sentence)) return null
  return runningAmong(sentence.jars).length > 1 ? { text: 'all', bits: [] } : null
}
