import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import { isMonth } from '../../../core/quantity/time/part-of-month.ts'
import { isPerson } from '../lexicon/people.ts'

const isWhose = (word: string): boolean =>
  /^(?:her|his|my|our|their|your|s)$/.test(word) || (word.endsWith('s') && isPerson(word))

/** `For her 30th`, `the 18th birthday`: how old somebody will be, no day of the month. */
export function isBirthday(typed: TypedText, at: number): boolean {
  const from = wordAt(typed, at) === 'the' ? at + 1 : at
  if (typed.tokens[from]?.kind !== 'number' || !/^(?:st|nd|rd|th)$/.test(wordAt(typed, from + 1))) return false
  const behind = wordAt(typed, from + 2)
  return (
    /^(?:birthday|bday|anniversary|wedding)$/.test(behind) ||
    (isWhose(wordAt(typed, from - 1)) && !isMonth(behind) && behind !== 'of')
  )
}
