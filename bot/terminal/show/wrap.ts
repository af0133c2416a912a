import { textWidth } from './text-width.ts'

/** Ordinary spaces for those that only held a number and its unit together. */
export const unbind = (text: string): string => text.replaceAll('\u00a0', ' ')

const signs = new Intl.Segmenter('en', { granularity: 'grapheme' })

/** The text in pieces of at most so many columns; a sign of several characters, as a family of people, stays whole. */
const chop = (text: string, columns: number): readonly string[] => {
  const pieces: string[] = []
  let piece = ''
  for (const { segment } of signs.segment(text)) {
    if (piece !== '' && textWidth(piece + segment) > columns) {
      pieces.push(piece)
      piece = ''
    }
    piece += segment
  }
  return piece === '' ? pieces : [...pieces, piece]
}

/** The text in lines of at most `width` columns, broken at spaces, inside a word only where it is longer than a line. */
export const wrap = (text: string, width: number): readonly string[] => {
  const lines: string[] = []
  let line = ''
  let taken = 0
  for (const word of text.split(/ +/).flatMap((each) => (textWidth(each) > width ? chop(each, width) : [each]))) {
    const more = textWidth(word)
    if (line !== '' && taken + 1 + more > width) {
      lines.push(line)
      line = ''
    }
    taken = line === '' ? more : taken + 1 + more
    line = line === '' ? word : `${line} ${word}`
  }
  return [...lines, line].map(unbind)
}

/** A line to type at the end of a text or of one of its sentences, such as an example. */
const TO_TYPE = /(?<=\s)(\/[a-z](?:(?!\s\/)[^;])*?(?:[.?](?=\s+\p{Lu})|(?=, or\s)|(?<![.;])$))/u

/** A sentence in lines as `wrap` breaks them, but a line to type and a path stay whole, so that they can be copied. */
export const wrapSentence = (text: string, width: number): readonly string[] => {
  // Every other piece is a line to type.
  const words = text
    .split(TO_TYPE)
    .flatMap((piece, index) => (index % 2 === 1 ? [piece] : piece.split(/ +/)))
    .filter((word, _, all) => word !== '' || all.length === 1)
  const lines: string[] = []
  for (const word of words) {
    const isWhole = word.includes('/')
    const last = lines.at(-1)
    const joined = last === undefined ? word : `${last} ${word}`
    if (last !== undefined && textWidth(joined) <= width) lines[lines.length - 1] = joined
    else lines.push(...(isWhole || textWidth(word) <= width ? [word] : chop(word, width)))
  }
  return lines.map(unbind)
}

/** Wrapped as a sentence with a mark before the first line and the same room before the others. */
export const hang = (mark: string, text: string, width: number): readonly string[] => {
  const room = textWidth(mark)
  return wrapSentence(text, Math.max(1, width - room)).map(
    (line, index) => (index === 0 ? mark : ' '.repeat(room)) + line,
  )
}
