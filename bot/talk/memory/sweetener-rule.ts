import { isRefused } from '../../../core/domain-error.ts'
import { parseSweetener } from '../../../core/quantity/read/parse-sugar.ts'
import { takes, withOption } from './change-call.ts'
import { callReading, changedOf, type Rule } from './rule.ts'

/** Amounts of what sweetens, which are another sweetener's no more. */
const AMOUNT = /^[\d.,¼½¾]+\s*\p{L}+\s*/u

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
