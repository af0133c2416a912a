import { exampleIn } from '../../../core/quantity/write/example-in.ts'
import type { CommandText } from '../../text/command-text.ts'
import type { FirstLine } from '../../text/help-text.ts'
import { type Kitchen, unitsIn } from '../../text/messages/kitchen.ts'
import type { Failure } from './call-outcome.ts'
import type { HelpPage } from './help-page.ts'

type Values = Failure['error']['values']

/** Lines to type in a problem's values, in the units of whoever reads them; what was `typed` stays. */
function linesIn(node: unknown, inUnits: (line: string) => string): unknown {
  if (typeof node === 'string') return node.startsWith('/') ? inUnits(node) : node
  if (Array.isArray(node)) return node.map((each) => linesIn(each, inUnits))
  if (typeof node !== 'object' || node === null || Object.getPrototypeOf(node) !== Object.prototype) return node
  return Object.fromEntries(Object.entries(node).map(([key, each]) => [key, linesIn(each, inUnits)]))
}

/** The same problem with its examples in the units of its kitchen. */
export function failureIn(failure: Failure, typed: string): Failure {
  const units = unitsIn(failure.kitchen)
  if (units.volume !== 'us' && units.mass !== 'us') return failure
  const values = linesIn(failure.error.values, (line) => exampleIn(line, units, typed)) as Values
  return { ...failure, error: { ...failure.error, values } }
}

/** A page of help whose examples are in the units of a kitchen. */
export function helpIn(page: HelpPage, kitchen: Kitchen, first: () => readonly FirstLine[]): HelpPage {
  const units = unitsIn(kitchen)
  if (units.volume !== 'us' && units.mass !== 'us') return page
  const said = (text: string): string => exampleIn(text, units)
  const all = (lines: readonly FirstLine[]): readonly FirstLine[] =>
    lines.map(({ line, what }) => ({ line: said(line), what }))
  return {
    ...page,
    ...(page.lines !== undefined && { lines: all(page.lines) }),
    ...(page.topics !== undefined && { firstLines: all(first()) }),
    entries: page.entries.map((entry) => ({
      ...entry,
      options: entry.options.map((option) => ({ ...option, text: said(option.text) })),
      examples: entry.examples.map(said),
    })),
  }
}

/** The first example of a command in the units of a kitchen. */
export const exampleOfCommand = ({ examples }: CommandText, kitchen: Kitchen): string | undefined =>
  examples[0] === undefined ? undefined : exampleIn(examples[0], unitsIn(kitchen))
