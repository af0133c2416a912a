import { unlessRefused } from '../../../core/domain-error.ts'
import { parseShare } from '../../../core/quantity/read/parse-share.ts'
import { parseSugarOrKind } from '../../../core/quantity/read/parse-sugar.ts'
import { unitsSaid } from '../../../core/quantity/read/units-said.ts'
import { householdMass } from '../../../core/quantity/write/household.ts'
import { householdTyped } from '../../../core/quantity/write/household-typed.ts'
import { kitchenRounded } from '../../../core/recipe/tool-precision.ts'
import type { Bit } from '../bits/bit.ts'
import type { CallRead } from '../frames/reading.ts'
import { takes, withOption } from './change-call.ts'
import { callReading, changedOf, type Rule } from './rule.ts'

/** `A third of the sugar`, `half the sugar`, `25 % of my sugar`, `metà dello zucchero`. */
const SHARE =
  /\b(half|(?:a|one|two|three) (?:third|quarter|fourth|fifth)s?|(?:un|due|tre) (?:terz|quart)[oi]|\d{1,2} ?(?:%|per ?cent)|metà)\s+(?:(?:of|di|del|dello)\s+)?(?:(?:the|my|your|that|lo)\s+)?(?:white\s+)?(?:sugar|zucchero)\b/iu

const isWhite = (text: string): boolean => /^(?:white )?(?:sugar|zucchero)$/i.test(text)

const isOfShare = ({ kind, role, value, text }: Bit, share: string): boolean =>
  role === 'left_out' || (kind === 'bare' && value <= 4) || (text !== '' && share.startsWith(text))

/** What was typed of white sugar alone, g; null where that is not what was typed. */
function typedG(text: string | undefined): number | null {
  const read = text === undefined ? null : unlessRefused(() => parseSugarOrKind(text))
  if (read === null || read.sweetener !== null || read.amounts.length === 0) return null
  const isPlain = read.amounts.every(({ material }) => material === 'white_sugar')
  return isPlain ? read.amounts.reduce((sum, { massG }) => sum + massG, 0) : null
}

/** As the amounts of the call are typed. */
function massTyped(massG: number, { options }: CallRead, isUs: boolean): string {
  const units = unitsSaid(Object.values(options).join(' ')) ?? (isUs ? 'us' : 'metric')
  const rounded = kitchenRounded(massG)
  const told = householdMass(rounded, units)
  return told === null ? `${rounded.value} g` : householdTyped(told)
}

/** So much of an example where nobody knows how much sugar it takes, g. */
const USUAL_G = 500
const USUAL_SHARE = 1 / 5

/**
 * `Swap a third of the sugar for honey`: of sugar that was typed the share goes over, weight for weight. Of what is worked out it is asked
 * by an example with that share of it, since it would go in with the plants.
 */
export const sharedSweetener: Rule = ({ bits, typed, isUs }, last, { drink }) => {
  const call = changedOf(last)
  const said = SHARE.exec(typed.text)?.[1] ?? ''
  const others = bits.filter(({ kind }) => kind !== 'sugar')
  const sweet = bits.filter(({ kind }) => kind === 'sugar')
  const shared = said === '' ? sweet.filter(({ role }) => role === 'left_out') : sweet
  const honey = shared.find(({ text }) => !isWhite(text))
  if (
    shared.length !== 2 ||
    honey === undefined ||
    !takes(call.command, 'sugar') ||
    !others.every((bit) => isOfShare(bit, said))
  )
    return null
  const share = parseShare(said)?.share ?? null
  const known = typedG(call.options.sugar)
  const allG = known ?? drink?.sugarG ?? USUAL_G
  const partG = (share ?? USUAL_SHARE) * allG
  const both = [allG - partG, partG].map((massG) => massTyped(massG, call, isUs)).join(' + ')
  const sample = `${both} ${honey.text.toLowerCase()}`
  if (known !== null && share !== null) return callReading(withOption(call, 'sugar', sample))
  return { kind: 'question', call, about: { kind: 'lacks', option: 'sugar', sample }, choices: [], leftOut: [] }
}
