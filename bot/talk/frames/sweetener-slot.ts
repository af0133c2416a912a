import { isRefused } from '../../../core/domain-error.ts'
import { parseSweetener } from '../../../core/quantity/read/parse-sugar.ts'
import { wordAt } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { amountOf } from './amount-slots.ts'
import type { Fill } from './plant-slots.ts'

const amount = amountOf('of_sugar', 'sugar')

/** Ends what a sweetener is said to be in the place of: `instead of`, `rather than`, `al posto dello`, `not`. */
const IN_PLACE_OF =
  /(?:\b(?:instead|place|lieu) of|\b(?:rather than|not|non|no|without|senza)|\binvece (?:di|del|dello|della)|\b(?:posto|luogo) (?:di|del|dello|della)|\banziche)(?: the| any| lo| il)?$/

const PLAIN = /^(?:white |caster |granulated )?(?:sugar|zucchero)(?: bianco)?$/

const BACK = 4

/** Whether it is what is not to be used. */
function isReplaced({ typed }: Sentence, { from, role }: Bit): boolean {
  const before = Array.from({ length: BACK }, (_, at) => wordAt(typed, from - BACK + at)).join(' ')
  return role === 'gone' || role === 'left_out' || IN_PLACE_OF.test(before.trim())
}

/** An amount of sugar, or what sweetens without one: `with honey instead of sugar`, `con zucchero di canna`. */
export const sweetener: Fill = (sentence, command) => {
  const said = amount(sentence, command)
  if (said !== null) return said
  const named = sentence.bits.filter(({ kind }) => kind === 'sugar')
  const replaced = named.filter((bit) => isReplaced(sentence, bit))
  const [only, another] = named.filter((bit) => !replaced.includes(bit))
  if (only === undefined || another !== undefined) return null
  const text = only.text.toLowerCase()
  // Sugar alone is what is taken anyway; what is no sugar at all is named as left out.
  if (PLAIN.test(text) || isRefused(() => parseSweetener(text))) return null
  return { text, bits: [only, ...replaced] }
}
