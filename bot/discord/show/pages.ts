import { cutText } from './cut-text.ts'
import { escapePlain } from './escape-text.ts'

/** One line of a reply: marks of ours around a plain text, which is escaped. */
export interface PageLine {
  /** Markdown, said once where the text is cut. */
  readonly lead: string
  readonly open: string
  readonly text: string
  readonly close: string
}

/** Lines that belong together. */
export type Block = readonly PageLine[]

/** What one message shows: the text of each of its blocks. */
export type Page = readonly string[]

interface Piece {
  readonly block: number
  readonly text: string
  /** False where it goes on with a line that began before. */
  readonly isStart: boolean
}

/** Below so many characters a line is begun in a new message instead of being cut. */
const LEAST_ROOM = 200

const lengthOf = (text: string): number => escapePlain(text).length

const shown = ({ lead, open, text, close }: PageLine): string => `${lead}${open}${escapePlain(text)}${close}`

/** A line in pieces: the first for what is left of a message, the others for a whole one each. */
function piecesOf(line: PageLine, first: number, room: number): readonly string[] {
  const pieces: string[] = []
  let { lead, text } = line
  let left = first
  while (text !== '') {
    const marks = lead.length + line.open.length + line.close.length
    const { head, rest } = cutText(text, left - marks, lengthOf)
    pieces.push(shown({ ...line, lead, text: head.trimEnd() }))
    ;[lead, text, left] = ['', rest.trimStart(), room]
  }
  return pieces
}

const sizeOf = (lines: readonly string[]): number => lines.reduce((sum, line) => sum + line.length + 1, 0)

function paginate(blocks: readonly Block[], room: number): readonly (readonly Piece[])[] {
  const pages: Piece[][] = [[]]
  let left = room
  const turn = (): void => {
    if (left === room) return
    pages.push([])
    left = room
  }
  const put = (piece: Piece): void => {
    pages.at(-1)?.push(piece)
    left -= piece.text.length + 1
  }
  for (const [block, lines] of blocks.entries()) {
    const size = sizeOf(lines.map(shown))
    if (size > left && size <= room / 2) turn()
    for (const line of lines) {
      const whole = shown(line)
      if (whole.length < left) put({ block, text: whole, isStart: true })
      else if (whole.length < room) {
        turn()
        put({ block, text: whole, isStart: true })
      } else {
        if (left < LEAST_ROOM) turn()
        for (const [index, text] of piecesOf(line, left - 1, room - 1).entries()) {
          if (index > 0) turn()
          put({ block, text, isStart: index === 0 })
        }
      }
    }
  }
  return pages
}

const pageOf = (pieces: readonly Piece[]): Page =>
  [...new Set(pieces.map(({ block }) => block))].map((block) =>
    pieces
      .filter((piece) => piece.block === block)
      .map(({ text }) => text)
      .join('\n'),
  )

/**
 * Blocks dealt out to at most `most` messages of at most `room` characters: parted between blocks, else between lines,
 * else between words. `leftOut` counts the lines that are not, or not wholly, there.
 */
export function pagesOf(
  blocks: readonly Block[],
  room: number,
  most: number,
): { readonly pages: readonly Page[]; readonly leftOut: number } {
  const all = paginate(blocks, room)
  const dropped = all.slice(most).flat()
  const starts = dropped.filter(({ isStart }) => isStart).length
  const goesOn = dropped[0]?.isStart === false ? 1 : 0
  return { pages: all.slice(0, most).map(pageOf), leftOut: starts + goesOn }
}
