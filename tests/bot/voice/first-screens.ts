import { testDesk } from '../test-desk.ts'
import type { Budget } from './budgets.ts'

export type Columns = keyof Budget

export const WIDTHS: readonly Columns[] = [80, 44]

/** 1 September 2026, in the morning. */
export const nowMs = Date.UTC(2026, 8, 1, 9)

/** What a line prints first, without blank lines. */
export async function firstLines(line: string, columns: Columns, desk = testDesk({ nowMs, width: columns })) {
  return (await desk.firstOf(line)).split('\n').filter((each) => each.trim() !== '')
}

/** The lines whose answers are longer than they may be, each with its length and its answer. */
export async function tooLong(
  lines: readonly string[],
  columns: Columns,
  mostOf: (line: string) => number,
): Promise<readonly string[]> {
  const found: string[] = []
  let longest = { line: '', count: 0 }
  for (const line of lines) {
    const printed = await firstLines(line, columns)
    if (printed.length > longest.count) longest = { line, count: printed.length }
    if (printed.length > mostOf(line)) found.push(`${printed.length} lines: ${line}\n${printed.join('\n')}`)
  }
  console.log(`the longest at ${columns} columns has ${longest.count} lines: ${longest.line}`)
  return found
}
