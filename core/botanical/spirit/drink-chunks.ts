import { plainWords } from '../../spelling/normalise-name.ts'

/** One word as it is compared, and which of the pieces typed it comes from. */
export interface DrinkWord {
  readonly word: string
  readonly piece: number
}

export interface DrinkText {
  /** As typed, without the marks around it. */
  readonly pieces: readonly string[]
  readonly words: readonly DrinkWord[]
}

const MARKS = /^[^\p{L}\p{N}]+|[^\p{L}\p{M}\p{N}]+$/gu

/** The pieces of a text between spaces, and the words in them: `eau-de-vie` is one piece and three words. */
export const drinkText = (text: string): DrinkText => {
  const pieces = text
    .split(/\s+/)
    .map((piece) => piece.replace(MARKS, ''))
    .filter((piece) => piece !== '')
  return { pieces, words: pieces.flatMap((piece, at) => plainWords(piece).map((word) => ({ word, piece: at }))) }
}
