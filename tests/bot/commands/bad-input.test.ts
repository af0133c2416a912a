import { expect, test } from 'vitest'
import { askAny, faults, textOf, UNSEEMLY } from './desk.ts'

const BAD: readonly [what: string, typed: string][] = [
  ['a negative amount', '-1 l'],
  ['a negative amount with a real minus', '−1 l'],
  ['nothing at all', '0 ml'],
  ['a unit nobody knows', '3 flagons'],
  ['a thousand or one', '1,000 ml'],
  ['an exponent', '1e3 ml'],
  ['an exponent with a sign', '1E+03 ml'],
  ['400 digits', `${'9'.repeat(400)} ml`],
  ['400 digits after the point', `0.${'1'.repeat(400)} l`],
  ['an emoji', '🍋 ml'],
  ['an emoji for a unit', '1 🍋'],
  ['a right-to-left mark', '1\u200f l'],
  ['a right-to-left override', '\u202e1 l'],
  ['a null character', '1\u0000 l'],
  ['an escape sequence', '\u001b[31m1 l'],
  ['Arabic digits', '١ l'],
  ['not a number', 'NaN ml'],
  ['endless', 'Infinity ml'],
  ['a hexadecimal', '0x10 ml'],
  ['a strength', '95%'],
  ['a temperature', '20 C'],
  ['two amounts', '1 l 2 l'],
  ['two points', '1.2.3 l'],
  ['words', 'a lot'],
  ['an empty quotation', '""'],
  ['an object', '{}'],
  ['a prototype', '__proto__'],
  ['too much', '1000.1 l'],
  ['too little', '0.01 ml'],
  ['a ± wider than the value', '1±2 l'],
]

const BAD_STRENGTHS = ['110%', '0.95', '0,95', '-5%', '0%', '1e2%', '96 ml', '96 g/L', '200.1 proof', '🍋%', '95 % mas']
const BAD_SWEETNESSES = ['-1 g/L', '1201 g/L', '1e2 g/L', '25%', 'sweetish', '250 g/kg', '1,000 g/L']

const LINES: readonly [what: string, line: string][] = [
  ...BAD.flatMap(([what, typed]): [string, string][] => [
    [`${what} of spirit`, `/mix spirit:${typed} strength:95%`],
    [`${what} of infusion`, `/syrup infusion:${typed} strength:90% to-strength:30% ratio:1`],
    [`${what} of liqueur`, `/adjust liqueur:${typed} strength:30% to-strength:25%`],
    [`${what} in a blend`, `/blend parts:600 ml 47% + ${typed} 30%`],
    [`${what} at most`, `/syrup infusion:1 l strength:90% at-most:${typed}`],
  ]),
  ...BAD_STRENGTHS.flatMap((typed): [string, string][] => [
    [`a strength of ${typed}`, `/syrup 1 l strength:${typed}`],
    [`a target of ${typed}`, `/dilute 1 l 95% to-strength:${typed}`],
  ]),
  ...BAD_SWEETNESSES.map((typed): [string, string] => [
    `sweetness ${typed}`,
    `/syrup 1 l strength:90% to-sweetness:${typed}`,
  ]),
  ['an empty line', ''],
  ['a slash', '/'],
  ['an open quotation', '/mix spirit:"1 l'],
]

// A strength beside "0.01 ml", or "95%" for an amount, are the mix's own way of writing a spirit; both lack an amount.
test.each(LINES)('%s: a few words that say what is wrong', async (_, line) => {
  const { error } = await askAny(line)
  expect(error, line.slice(0, 80)).toBeDefined()
  const message = error?.message ?? ''
  expect(error?.code).not.toBe('internal')
  expect(faults()).toEqual([])
  const withoutTyped = message.replace(/“[^”]*”/g, '“”')
  expect(withoutTyped).not.toMatch(UNSEEMLY)
  expect(message).not.toMatch(/[\p{Cc}\p{Cf}]/u)
  expect(message.length).toBeLessThan(400)
  // A sentence or two, and a line to type.
  expect(withoutTyped).toMatch(/^\P{Cc}+(?:[.?]| \/[a-z]\P{Cc}+)$/u)
  expect(withoutTyped.match(/[.?] [A-Z“]/g)?.length ?? 0).toBeLessThanOrEqual(2)
  // The terminal breaks it into lines and changes nothing else.
  expect((await textOf(line)).replace(/\s/g, '')).toBe(message.replace(/\s/g, ''))
})
