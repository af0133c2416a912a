/**
 * The 32 symbols, by value. Source: Douglas Crockford, "Base 32", crockford.com/base32.html (from memory): digits and
 * letters but I, L, O and U; reading takes either case, O for 0 and I or L for 1, and passes over hyphens.
 */
const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'

const values: ReadonlyMap<string, number> = new Map([
  ...[...ALPHABET].map((letter, value) => [letter, value] as const),
  ['O', 0],
  ['I', 1],
  ['L', 1],
])

/** Hyphens of every kind, and spaces. */
const PASSED_OVER = /[\p{Pd}\p{Z}\s]/gu

/** `symbols` are 0 to 31. */
export const toCrockford = (symbols: readonly number[]): string => symbols.map((symbol) => ALPHABET[symbol]).join('')

/** The symbols, 0 to 31; null where a character is none. */
export function fromCrockford(text: string): readonly number[] | null {
  // Only ASCII is brought to upper case: `ı` and `ſ` are damage, not I and S.
  const letters = [...text.replace(PASSED_OVER, '').replace(/[a-z]+/g, (run) => run.toUpperCase())]
  const symbols = letters.flatMap((letter) => values.get(letter) ?? [])
  return symbols.length === letters.length ? symbols : null
}
