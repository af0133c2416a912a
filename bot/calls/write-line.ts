/** A value that the grammar would end too soon, or take for a quoted one. */
const NEEDS_QUOTES = /^["“„”«]|(?<!\S)[\p{L}_][\p{L}\p{M}\p{N}_-]*\s*:/u

/** A value of an option as the grammar reads it back whole. */
export const quoted = (value: string): string =>
  NEEDS_QUOTES.test(value) ? `"${value.replace(/["\\]/g, '\\$&')}"` : value

type Options = readonly (readonly [name: string, value: string])[]

/** A line that can be typed: `jar` is the value of the command's first option, whose name is left out; null for none. */
export const writeLine = (path: string, jar: string | null, options: Options = []): string =>
  [
    `/${path}`,
    ...(jar === null ? [] : [quoted(jar)]),
    ...options.map(([name, value]) => `${name}:${quoted(value)}`),
  ].join(' ')
