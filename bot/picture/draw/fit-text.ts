import { type Drawn, type Face, graphemesOf, type Typefaces } from './typefaces.ts'

const ELLIPSIS = '…'

interface Room {
  readonly width: number
  readonly size: number
  readonly face: Face
}

const fits = (text: string, { face }: Drawn, { width, size }: Room, faces: Typefaces): boolean =>
  faces.widthOf(text, face, size) <= width

/** The longest beginning that fits together with what follows it; a character at least. */
function beginning(text: string, drawn: Drawn, room: Room, faces: Typefaces, after = ''): string {
  const pieces = graphemesOf(text)
  let kept = ''
  for (const piece of pieces) {
    if (kept !== '' && !fits(`${kept}${piece}${after}`, drawn, room, faces)) break
    kept += piece
  }
  return kept
}

/** In one line of the room, with … in place of what does not fit. */
export function shortened(drawn: Drawn, room: Room, faces: Typefaces): string {
  if (fits(drawn.text, drawn, room, faces)) return drawn.text
  return `${beginning(drawn.text, drawn, room, faces, ELLIPSIS).trimEnd()}${ELLIPSIS}`
}

/** In at most so many lines of the room, broken between words where that can be; the last one shortened. */
export function wrapped(drawn: Drawn, room: Room, lines: number, faces: Typefaces): readonly string[] {
  const done: string[] = []
  let rest = drawn.text.trim()
  while (rest !== '' && done.length < lines - 1 && !fits(rest, drawn, room, faces)) {
    const line = firstLine(rest, drawn, room, faces)
    done.push(line.trimEnd())
    rest = rest.slice(line.length).trimStart()
  }
  return rest === '' ? done : [...done, shortened({ ...drawn, text: rest }, room, faces)]
}

function firstLine(text: string, drawn: Drawn, room: Room, faces: Typefaces): string {
  const words = text.split(' ')
  let count = 0
  while (count < words.length && fits(words.slice(0, count + 1).join(' '), drawn, room, faces)) count++
  return count > 0 ? words.slice(0, count).join(' ') : beginning(text, drawn, room, faces)
}
