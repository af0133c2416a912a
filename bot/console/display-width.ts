const TAKES_NONE = /[\p{Mn}\p{Me}\p{Cf}]/u

/** East Asian wide and full-width characters, and pictures. */
const TAKES_TWO =
  /[\u1100-\u115F\u2E80-\u303E\u3041-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF01-\uFF60\uFFE0-\uFFE6\u{1F300}-\u{1FAFF}\u{20000}-\u{3FFFD}]/u

/** How many columns one character takes. */
const columnsOf = (character: string): number => {
  if (character < '\u0300') return 1
  if (TAKES_NONE.test(character)) return 0
  return TAKES_TWO.test(character) ? 2 : 1
}

/** How many columns of a terminal a text takes. */
export const displayWidth = (text: string): number => {
  let columns = 0
  for (const character of text) columns += columnsOf(character)
  return columns
}

export const padTo = (text: string, columns: number): string =>
  text + ' '.repeat(Math.max(0, columns - displayWidth(text)))

/** The text in pieces of at most so many columns. */
export const chop = (text: string, columns: number): readonly string[] => {
  const pieces: string[] = []
  let piece = ''
  let taken = 0
  for (const character of text) {
    const more = columnsOf(character)
    if (taken + more > columns && piece !== '') {
      pieces.push(piece)
      piece = ''
      taken = 0
    }
    piece += character
    taken += more
  }
  return piece === '' ? pieces : [...pieces, piece]
}
