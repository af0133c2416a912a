import { exampleIn } from '../../../core/quantity/write/example-in.ts'
import type { CommandText } from '../../text/command-text.ts'
import type { FirstLine } from '../../text/help-text.ts'
import type { Spoken } from '../../text/language.ts'
import { isKitchenOf, type Kitchen, type MixedKitchen, unitsIn } from '../../text/messages/kitchen.ts'
import type { Failure } from './call-outcome.ts'
import { isExampleOf, type Try } from './example-tried.ts'
import type { HelpPage } from './help-page.ts'
import { EXAMPLES } from './option-examples.ts'

type Values = Failure['error']['values']

const isExample = (option: string, text: string): boolean =>
  EXAMPLES[option]?.includes(text) === true || isExampleOf(option, text)

/** Where one option of a line ends and the next begins. */
const BETWEEN_OPTIONS = / (?=[a-z][a-z-]*:)/

/**
 * A line that a problem offers, with our examples in it as a kitchen types them. What somebody has `typed` stays, and so does what
 * was worked out: the most of a plant is not to become more by a rounder measure.
 */
function lineIn(line: string, units: MixedKitchen, typed: string): string {
  const parts = line.split(BETWEEN_OPTIONS).map((part) => {
    const [, option = '', text = ''] = /^([a-z-]+):(.*)$/s.exec(part) ?? []
    const isOurs = isExample(option, text) || option === 'to-sweetness'
    return isOurs ? `${option}:${exampleIn(text, units, typed)}` : part
  })
  return parts.join(' ')
}

/** The texts in a problem's values, each as it is made. */
function textsIn(node: unknown, made: (text: string) => string): unknown {
  if (typeof node === 'string') return made(node)
  if (Array.isArray(node)) return node.map((each) => textsIn(each, made))
  if (typeof node !== 'object' || node === null || Object.getPrototypeOf(node) !== Object.prototype) return node
  return Object.fromEntries(Object.entries(node).map(([key, each]) => [key, textsIn(each, made)]))
}

/** Lines that a problem offers, each with itself as its kitchen types it, where that is another. */
function otherwiseIn(values: Values, units: MixedKitchen, typed: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>()
  textsIn(values, (text) => {
    const own = text.startsWith('/') ? lineIn(text, units, typed) : text
    if (own !== text) found.set(text, own)
    return text
  })
  return found
}

const withLines = (failure: Failure, lines: ReadonlyMap<string, string>): Failure =>
  lines.size === 0
    ? failure
    : {
        ...failure,
        error: {
          ...failure.error,
          values: textsIn(failure.error.values, (text) => lines.get(text) ?? text) as Values,
        },
      }

const isUs = ({ volume, mass }: MixedKitchen): boolean => volume === 'us' || mass === 'us'

/** The same problem with its examples in the units of its kitchen, where they were not tried. */
export function failureIn(failure: Failure, typed: string): Failure {
  const units = unitsIn(failure.kitchen)
  return isUs(units) ? withLines(failure, otherwiseIn(failure.error.values, units, typed)) : failure
}

/** The same where lines are tried: one that runs is not to become one that does not. */
export async function failureTriedIn(failure: Failure, typed: string, attempt: Try): Promise<Failure> {
  const units = unitsIn(failure.kitchen)
  if (!isUs(units)) return failure
  const lines = new Map<string, string>()
  for (const [line, own] of otherwiseIn(failure.error.values, units, typed)) {
    if ((await attempt(own)).ok || !(await attempt(line)).ok) lines.set(line, own)
  }
  return withLines(failure, lines)
}

/** A page of help whose examples are in the units of a kitchen, and its words those that are said there. */
export function helpIn(
  page: HelpPage,
  kitchen: Kitchen,
  { help, american }: Pick<Spoken['language'], 'help' | 'american'>,
): HelpPage {
  const units = unitsIn(kitchen)
  if (!isUs(units)) return page
  const said = (text: string): string => exampleIn(text, units)
  const worded = (text: string): string => (isKitchenOf('us', kitchen) ? (american?.(text, []) ?? text) : text)
  const all = (lines: readonly FirstLine[]): readonly FirstLine[] =>
    lines.map(({ line, what }) => ({ line: said(line), what: worded(what) }))
  return {
    ...page,
    ...(page.lines !== undefined && { lines: all(page.lines) }),
    ...(page.topics !== undefined && { firstLines: all(help.first()) }),
    entries: page.entries.map((entry) => ({
      ...entry,
      summary: worded(entry.summary),
      options: entry.options.map((option) => ({ ...option, text: worded(said(option.text)) })),
      examples: entry.examples.map(said),
    })),
  }
}

/** The first example of a command in the units of a kitchen. */
export const exampleOfCommand = ({ examples }: CommandText, kitchen: Kitchen): string | undefined =>
  examples[0] === undefined ? undefined : exampleIn(examples[0], unitsIn(kitchen))
