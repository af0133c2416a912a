import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { waitingForSyrup } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Remembered } from './remembered.ts'
import { callReading, lacking, NO_LIQUEUR, WORKED_OUT, whichJar } from './rule.ts'

/** How a syrup is asked for whose strength or sweetness is said behind. */
const ASKED =
  /^(?:(?:and|so|ok|now|then|e|allora) )*(?:how much|how many|what|which|quanto|quale|che)? ?(?:sugar )?(?:syrup|sciroppo)(?: (?:do|does|should|shall|must|would|will|can|i|we|you|it|need|needs|take|takes|add|make|use|want|is|needed|mi|ci|serve|vuole|devo|aggiungere|fare|metto))*(?: (?:for|to|at|to get|to reach|to come|to hit|to make it|to bring it|to get it|down|per|a|per arrivare|per avere))* ?$/u

/** What was worked out with a syrup in it. */
const OF_SYRUP = /^(?:plan|again|syrup)$/

const isTarget = ({ kind, value }: Bit): boolean => kind === 'sweetness' || (kind === 'strength' && value <= NO_LIQUEUR)

/** From the first number on: nothing but numbers, and what joins them. */
const JOINS = /^(?:and|at|with|e|con|a|g|l|of|sugar|please|pls|then|[?.!,])$/

/**
 * `How much syrup for 28 %?`: of the jar that waits for it; of several it is asked which, without one how much there is. Of what was
 * just worked out it is a change of that.
 */
export function syrupAsked({ bits, typed, jars }: Sentence, { call }: Pick<Remembered, 'call'>): TalkReading | null {
  const [first] = bits
  if (first === undefined || !bits.every(isTarget)) return null
  const before = wordsFrom({ ...typed, tokens: typed.tokens.slice(0, first.from) })
  const isWithin = (at: number): boolean => bits.some(({ from, to }) => from <= at && at < to)
  const isOnly = typed.tokens.every(({ text }, at) => at < first.from || isWithin(at) || JOINS.test(text))
  if (!ASKED.test(before) || !isOnly) return null
  const options = Object.fromEntries(
    bits.map(({ kind, text }) => [kind === 'strength' ? 'to-strength' : 'to-sweetness', text]),
  )
  if (Object.keys(options).length < bits.length) return null
  if (call !== null && WORKED_OUT.test(call.command))
    return OF_SYRUP.test(call.command) ? callReading({ ...call, options: { ...call.options, ...options } }) : null
  const choices = waitingForSyrup(jars).map(
    ({ name }): CallRead => ({
      command: 'syrup',
      options: { jar: name, ...options },
    }),
  )
  const [only, another] = choices
  if (only !== undefined)
    return another === undefined ? callReading(only) : whichJar({ command: 'syrup', options }, choices)
  return lacking({ command: 'syrup', options }, 'infusion')
}
