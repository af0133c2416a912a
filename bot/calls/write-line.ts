import { type Call, invocationOf, type TextsOf, typedCall } from './call.ts'
import type { Invocation } from './invocation.ts'
import { optionTextOf } from './option.ts'
import { type Path, signatures } from './signatures.ts'

/** A value that the grammar would end too soon, or take for a quoted one. */
const NEEDS_QUOTES = /^["“„”«]|(?<!\S)[\p{L}_][\p{L}\p{M}\p{N}_-]*\s*:/u

/** A value of an option as the grammar reads it back whole. */
export const quoted = (value: string): string =>
  NEEDS_QUOTES.test(value) ? `"${value.replace(/["\\]/g, '\\$&')}"` : value

/** Takes the rest of its line. */
const LAST = 'note'

/** The first option of a command that names a jar, which goes without its own name; null where it is another. */
function namelessIn(path: string): string | null {
  const shape: Readonly<Record<string, unknown>> = signatures[path as Path]?.shape ?? {}
  const [first = ''] = Object.keys(shape)
  return optionTextOf(shape[first]).isName === true ? first : null
}

/**
 * A call as a line that the grammar reads as the same.
 *
 * @param isNamed - every option with its name, where none can be left out: `/jar show jar:lemon`
 */
export function lineOf(called: Call | Invocation, isNamed = false): string {
  const { path, options } = 'command' in called ? invocationOf(called) : called
  const nameless = namelessIn(path)
  const places = (name: string): number => (name === nameless ? 0 : name === LAST ? 2 : 1)
  const inOrder = Object.entries(options).toSorted(([one], [other]) => places(one) - places(other))
  const written = inOrder.map(([name, text]) =>
    name === nameless && !isNamed ? quoted(text) : `${name}:${quoted(text)}`,
  )
  return [`/${path}`, ...written].join(' ')
}

/** A line for a sentence: a command and options that it has, with values as somebody might type them. */
export const lineTyped = <Called extends Path>(path: Called, options: TextsOf<Called> = {}): string =>
  lineOf(typedCall(path, options))

/** The same with the value of its first option alone, as hands type it: `/plan 10 lemons spirit:1 l 95%`. */
export const shortLineTyped = <Called extends Path>(path: Called, options: TextsOf<Called>): string => {
  const [first] = Object.keys(signatures[path].shape)
  return lineTyped(path, options).replace(` ${first}:`, ' ')
}
