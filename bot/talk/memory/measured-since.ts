import type { Bit, Sentence } from '../bits/bit.ts'
import type { CallRead } from '../frames/reading.ts'
import { wordSet } from '../lexicon/concepts.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { optionFor, textOf } from './correct-step.ts'
import { callReading, NO_LIQUEUR, type Rule } from './rule.ts'

/** Steps that are written down unmeasured, and what can be measured of them. */
const MEASURED: Readonly<Record<string, readonly string[]>> = {
  'jar strain': ['measured', 'strength'],
  'jar filter': ['measured'],
}

/** What of the last step was left unmeasured; a straining that was corrected since may lack its other number. */
function unmeasured({ command, options }: CallRead): readonly string[] {
  const isHalf =
    command === 'jar correct' && Object.keys(options).some((name) => name === 'measured' || name === 'strength')
  const all = MEASURED[isHalf ? 'jar strain' : command] ?? []
  return all.filter((option) => options[option] === undefined)
}

const isRead = ({ kind, role }: Bit): boolean =>
  (kind === 'volume' || kind === 'strength' || kind === 'bare') && (role === null || role === 'have')

/** Small words and what was done alone stand between the amounts: nothing is asked or wished. */
function isNothingElse({ typed, lexicon, bits, spans, has }: Sentence): boolean {
  if (has('asking', 'wish', 'hypothesis', 'how_much', 'denial') || typed.text.includes('?')) return false
  if (has(...DEEDS) && !has('strained', 'filtered')) return false
  const fillers = wordSet(lexicon.fillers)
  const isWithin = (all: readonly { readonly from: number; readonly to: number }[], at: number): boolean =>
    all.some(({ from, to }) => from <= at && at < to)
  return typed.tokens.every(
    ({ kind, text }, at) => kind === 'sign' || isWithin(bits, at) || isWithin(spans, at) || fillers.has(text),
  )
}

/**
 * `930 ml at 87` behind a straining that was written down unmeasured: what was measured is put into it. A strength that a liqueur may
 * have is a wish where it is said alone.
 */
export const measuredSince: Rule = (sentence, last, { step, answersSince }) => {
  const { bits } = sentence
  const { jar } = last.options
  const open =
    step === null || answersSince > 0 ? [] : unmeasured({ ...last, options: { ...step.options, ...last.options } })
  if (jar === undefined || open.length === 0 || bits.length === 0 || !bits.every(isRead)) return null
  const options: Record<string, string> = {}
  for (const bit of bits) {
    const option = optionFor(bit, { command: 'jar strain', options: {} })
    if (option === null || option in options || !open.includes(option)) return null
    options[option] = textOf(bit, option)
  }
  const isWish = options.measured === undefined && bits.some(({ value }) => value <= NO_LIQUEUR)
  if (isWish || !isNothingElse(sentence)) return null
  return callReading({ command: 'jar correct', options: { jar, ...options } }, 'record')
}
