import { cookName } from '../../../bot/text/en/cook-names.ts'
import type { Botanical } from '../../../core/botanical/botanical.ts'
import { isFormAsked } from '../../../core/botanical/find/in-form.ts'
import { testDesk } from '../test-desk.ts'
import type { Budget } from './budgets.ts'

export type Columns = keyof Budget

export const WIDTHS: readonly Columns[] = [80, 44]

/** 1 September 2026, in the morning. */
export const nowMs = Date.UTC(2026, 8, 1, 9)

/** As a cook asks for a plant, and as only its form tells it apart. */
export function named(botanical: Botanical): string {
  const name = cookName(botanical.id)
  const { state } = botanical.form
  return isFormAsked(botanical) && !name.startsWith(state) ? `${state} ${name}` : name
}

/** The lines of a screen that are not empty. */
export const filled = (text: string): readonly string[] => text.split('\n').filter((each) => each.trim() !== '')

/** The lines whose answers are longer than they may be at a width, each with its length and its answer. */
export async function tooLong(
  lines: readonly string[],
  mostOf: (columns: Columns, line: string) => number,
): Promise<readonly string[]> {
  const found: string[] = []
  const longest = new Map(WIDTHS.map((columns) => [columns, { line: '', count: 0 }]))
  for (const line of lines) {
    for (const { width, text } of await testDesk({ nowMs }).firstAt(line, WIDTHS)) {
      const printed = filled(text)
      if (printed.length > longest.get(width)!.count) longest.set(width, { line, count: printed.length })
      if (printed.length > mostOf(width, line))
        found.push(`${printed.length} lines at ${width} columns: ${line}\n${printed.join('\n')}`)
    }
  }
  for (const [columns, { line, count }] of longest) {
    console.log(`the longest at ${columns} columns has ${count} lines: ${line}`)
  }
  return found
}
