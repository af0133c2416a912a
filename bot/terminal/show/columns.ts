import { textWidth } from './text-width.ts'
import { wrap } from './wrap.ts'

const MARGIN = '  '
const GAP = 2

/** Filled up with spaces to so many columns of a terminal. */
const padTo = (text: string, columns: number): string => text + ' '.repeat(Math.max(0, columns - textWidth(text)))

const BESIDE = '   '

/** A line to type after a text, or below it; never broken, so that it can be copied, and where it has no room it stands further left. */
function withLine(texts: readonly string[], line: string, room: number): readonly (readonly [string, boolean])[] {
  const kept = texts.map((text) => [text, true] as const)
  if (line === '') return kept
  const joined = `${texts.at(-1) ?? ''}${BESIDE}${line}`
  if (textWidth(joined) <= room) return [...kept.slice(0, -1), [joined, true]]
  return [...kept, [line, textWidth(line) <= room]]
}

/** Two aligned columns, indented; a text too long for its column goes on below, and so does a line to type beside it. */
export const columns = (
  rows: readonly (readonly [left: string, right: string, line?: string])[],
  width: number,
): readonly string[] => {
  const room = Math.max(2, width - MARGIN.length - GAP)
  const widest = Math.max(0, ...rows.map(([left]) => textWidth(left)))
  const leftWidth = Math.min(widest, Math.floor(room / 2))
  return rows.flatMap(([left, right, line = '']) => {
    const lefts = wrap(left, Math.max(1, leftWidth))
    const rights = withLine(wrap(right, Math.max(1, room - leftWidth)), line, room - leftWidth)
    const count = Math.max(lefts.length, rights.length)
    return Array.from({ length: count }, (_, index) => {
      const [text, hasRoom] = rights[index] ?? ['', true]
      const before = hasRoom ? `${padTo(lefts[index] ?? '', leftWidth)}${' '.repeat(GAP)}` : MARGIN
      return `${MARGIN}${before}${text}`.trimEnd()
    })
  })
}
