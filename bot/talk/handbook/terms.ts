import { plainWords } from '../../../core/spelling/normalise-name.ts'
import { sameTerm } from './same-words.ts'
import { stemOf } from './stem.ts'

/** The words of a sentence as the entries are found by them, in their order. */
export const termsOf = (text: string): readonly string[] => plainWords(text).map((word) => sameTerm(stemOf(word)))
