/**
 * What a spreadsheet may take for a formula, and a leading apostrophe, so that taking one away always gives what was there.
 * As OWASP advises against CSV injection (from memory); also the wide forms of the signs.
 */
const TAKEN_FOR_MORE = /^[=+\-@\t\r\n'＝＋－＠]/u

/** A text that no spreadsheet reckons with: behind an apostrophe where it would. */
export const harmless = (text: string): string => (TAKEN_FOR_MORE.test(text) ? `'${text}` : text)
