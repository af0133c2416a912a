import type { HelpEntry } from './help-page.ts'

/** Lines that a page of help may take in a narrow terminal, and how wide that is. */
const MOST_LINES = 23
const COLUMNS = 44
/** Before a row, and between its halves. */
const MARGINS = 4
/** Words do not fill their lines. */
const FILLED = 0.92

/** About how many lines a row of two columns takes there. */
const rowLines = (text: string, left: number): number =>
  Math.ceil(text.length / (FILLED * (COLUMNS - MARGINS - Math.min(left, (COLUMNS - MARGINS) / 2))))

/** How many of some rows have room beside `other` lines; all of them, or some and the line that asks for the rest. */
function roomFor(rows: readonly (readonly [left: string, text: string])[], other: number): number {
  const left = Math.max(0, ...rows.map(([each]) => each.length))
  let lines = other
  const fitting = rows.findIndex(([, text]) => {
    lines += rowLines(text, left)
    return lines > MOST_LINES
  })
  return fitting === -1 ? rows.length : fitting
}

/** Commands of a list that are told first. */
export const firstCommands = (entries: readonly HelpEntry[]): number =>
  roomFor(
    entries.map(({ command, summary }) => [`/${command}`, summary]),
    3,
  )

const plainLines = (text: string): number => Math.ceil(text.length / (FILLED * COLUMNS))

/** Options of a command that are told first, beside its first example; all where all of them have room beside all examples. */
export function firstOptions({ command, summary, options, examples }: HelpEntry): number {
  const rows = options.map(({ name, text }) => [`${name}:`, text] as const)
  const head = plainLines(`/${command}: ${summary}`) + 2
  const all = roomFor(rows, head + examples.reduce((sum, each) => sum + plainLines(each), 0))
  return all === rows.length ? all : roomFor(rows, head + 1 + plainLines(examples[0] ?? ''))
}
