import type { Budget } from './budgets.ts'
import { type Columns, WIDTHS } from './first-screens.ts'

/** Lines that count against a budget. */
export const linesOf = (text: string): number =>
  text.split('\n').filter((line) => line.trim() !== '' && !/^\s*read as /i.test(line)).length

/** A first screen that was measured. */
export interface MeasuredScreen {
  readonly of: string
  readonly width: Columns
  readonly lines: number
  readonly text: string
}

/** Those over their budget, the longest first, as a test shows them. */
export const overBudget = (screens: readonly MeasuredScreen[], budget: Budget): readonly string[] =>
  screens
    .filter(({ width, lines }) => lines > budget[width])
    .toSorted((one, other) => other.lines - one.lines)
    .map(({ of, width, lines, text }) => `${of} at ${width}: ${lines} lines\n${text}`)

/** The longest of each width, by name. */
export const longest = (screens: readonly MeasuredScreen[]): string =>
  WIDTHS.map((width) => {
    const [most] = screens.filter((each) => each.width === width).toSorted((one, other) => other.lines - one.lines)
    return most === undefined ? '' : `${width}: ${most.of} (${most.lines})`
  }).join(', ')
