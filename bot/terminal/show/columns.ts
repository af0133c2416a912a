import { textWidth } from './text-width.ts'
import { wrap } from './wrap.ts'

const MARGIN = '  '
const GAP = 2

/** Filled up with spaces to so many columns of a terminal. */
const padTo = (text: string, columns: number): string => text + ' '.repeat(Math.max(0, columns - textWidth(text)))

/** Two aligned columns, indented; a text too long for its column goes on below. */
export const columns = (
  rows: readonly (readonly [left: string, right: string])[],
  width: number,
): readonly string[] => {
  const room = Math.max(2, width - MARGIN.length - GAP)
  const widest = Math.max(0, ...rows.map(([left]) => textWidth(left)))
  const leftWidth = Math.min(widest, Math.floor(room / 2))
  return rows.flatMap(([left, right]) => {
    const lefts = wrap(left, Math.max(1, leftWidth))
    const rights = wrap(right, Math.max(1, room - leftWidth))
    const count = Math.max(lefts.length, rights.length)
    return Array.from({ length: count }, (_, index) =>
      `${MARGIN}${padTo(lefts[index] ?? '', leftWidth)}${' '.repeat(GAP)}${rights[index] ?? ''}`.trimEnd(),
    )
  })
}
