import { isRefused } from '../../../core/domain-error.ts'
import { parseSweetener } from '../../../core/quantity/read/parse-sugar.ts'
import type { Bit } from '../bits/bit.ts'
import { takes, withOption } from './change-call.ts'
import { callReading, changedOf, type Rule } from './rule.ts'

/** Amounts of what sweetens, which are another sweetener's no more. */
const AMOUNT = /^[\d.,¼½¾]+\s*\p{L}+\s*/u

const isOfShare = ({ kind, role, value }: Bit): boolean => role === 'left_out' || (kind === 'bare' && value <= 4)

/** `Swap a third of the sugar for honey`: how much of each it is has to be told. */
export const sharedSweetener: Rule = ({ bits }, last) => {
  const call = changedOf(last)
  const others = bits.filter(({ kind }) => kind !== 'sugar')
  const shared = bits.filter(({ kind, role }) => kind === 'sugar' && role === 'left_out')
  const honey = shared.find(({ text }) => !/^(?:white )?(?:sugar|zucchero)$/i.test(text))
  if (shared.length === 2 && honey !== undefined && takes(call.command, 'sugar') && others.every(isOfShare)) {
    const sample = `400 g + 100 g ${honey.text.toLowerCase()}`
    return { kind: 'question', call, about: { kind: 'lacks', option: 'sugar', sample }, choices: [], leftOut: [] }
  }
  return null
}

/** `use honey instead`, `with brown sugar`, `col miele`: the last call with another sweetener; one with an amount keeps it. */
export const otherSweetener: Rule = ({ bits, has, typed }, last) => {
  const call = changedOf(last)
  const [sweet, other] = bits.filter(({ kind }) => kind === 'sugar')
  const others = bits.filter(({ kind }) => kind !== 'sugar')
  // Of `honey instead of sugar` the first is wished.
  if (sweet === undefined || others.length > 0 || (other !== undefined && !has('instead')) || typed.tokens.length > 10)
    return null
  if (!has('instead', 'only_have') || has('without') || !takes(call.command, 'sugar') || call.command === 'mix')
    return null
  const text = sweet.text.toLowerCase()
  if (isRefused(() => parseSweetener(text))) return null
  const now = AMOUNT.exec(call.options.sugar ?? '')?.[0] ?? ''
  return callReading(withOption(call, 'sugar', `${now.trim()} ${text}`.trim()))
}
