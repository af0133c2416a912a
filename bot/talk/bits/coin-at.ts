import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import { type Bit, bit } from './bit.ts'

const COINS: ReadonlyMap<string, number> = new Map([
  ['fiver', 5],
  ['tenner', 10],
])

/** `A fiver`, `tenner`: what is paid. */
export function coinAt(typed: TypedText, at: number): Bit | null {
  const word = /^an?$/.test(wordAt(typed, at)) ? at + 1 : at
  const pounds = COINS.get(wordAt(typed, word))
  return pounds === undefined ? null : bit('bare', at, word + 1, pounds, wordAt(typed, word), { role: 'price' })
}
