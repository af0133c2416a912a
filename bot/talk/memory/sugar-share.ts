import { unlessRefused } from '../../../core/domain-error.ts'
import { parseSweetness } from '../../../core/quantity/read/parse-sweetness.ts'
import { USUAL } from '../../../core/recipe/plan/reach-targets.ts'
import type { CallRead } from '../frames/reading.ts'
import { scaled, sweetened, takes, withOption } from './change-call.ts'
import { callReading, changedOf, type Rule } from './rule.ts'

const PERCENT = String.raw`(\d+(?:[.,]\d+)?)\s*(?:%|per ?cent)`
/** `10 % less sugar`, `cut the sugar by 10 %`. */
const SAID: readonly RegExp[] = [
  new RegExp(String.raw`${PERCENT}\s+(less|more)\s+(?:of the |of )?(?:sugar|sweet)`, 'i'),
  new RegExp(String.raw`\b(less|more) sugar,? by ${PERCENT}`, 'i'),
  new RegExp(
    String.raw`\b(cut|reduce|lower|drop|raise|increase)\s+(?:the |its )?(?:sugar|sweetness) (?:by )?${PERCENT}`,
    'i',
  ),
]

/** How many times as much sugar is wished; null where nothing of it is said. */
function factorIn(text: string): number | null {
  const found = SAID.map((pattern) => pattern.exec(text)).find((match) => match !== null)
  const number = found?.slice(1).find((part) => /\d/.test(part))
  if (found === undefined || number === undefined) return null
  const share = Number(number.replace(',', '.')) / 100
  const factor = /more|raise|increase/i.test(found[0]) ? 1 + share : 1 - share
  return factor > 0 ? factor : null
}

/** As sweet as that many times the sugar makes it. */
export const sugarShare: Rule = ({ typed }, last, { offered }) => {
  const factor = factorIn(typed.text)
  const call = changedOf(last)
  if (factor === null || !takes(call.command, 'to-sweetness')) return null
  const isPlanned = call.command === 'plan' || call.command === 'again'
  // What is planned is said whole by the line that starts it.
  const start = offered.find(({ command }) => command === 'jar start')
  const {
    sugar,
    from,
    'to-sweetness': target,
  }: CallRead['options'] = {
    ...(isPlanned ? start?.options : {}),
    ...call.options,
  }
  const told = target === undefined ? null : unlessRefused(() => parseSweetness(target).sugarGPerL)
  const now = told ?? (isPlanned && from === undefined ? USUAL.sugarGPerL : null)
  if (now === null) return callReading(sweetened(call, factor > 1, false), 'compute', [typed.text])
  const sweet = withOption(call, 'to-sweetness', `${Math.round(now * factor)} g/L`)
  const weighed = sugar === undefined ? null : scaled({ command: 'plan', options: { sugar } }, factor)
  return callReading(weighed === null ? sweet : withOption(sweet, 'sugar', weighed.options.sugar!))
}
