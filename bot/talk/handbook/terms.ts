import { byName, byOtherNumber } from '../../../core/botanical/names/name-index.ts'
import { plainWords, singular } from '../../../core/spelling/normalise-name.ts'
import { termOf } from './same-words.ts'
import { smallWords } from './small-words.ts'

/** The words of a sentence as the entries are found by them, in their order. */
export const termsOf = (text: string): readonly string[] => plainWords(text).map(termOf)

/** The term of fruit, which any plant may be. */
export const FRUIT = termOf('fruit')

const isPlant = (word: string): boolean =>
  !smallWords.has(word) && (byName.has(singular(word)) || byOtherNumber.has(singular(word)))

/** The terms of plants that the catalogue has by that one word. */
export const plantTerms = (text: string): readonly string[] => [
  ...new Set(plainWords(text).filter(isPlant).map(termOf)),
]
