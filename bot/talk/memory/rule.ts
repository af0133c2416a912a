import type { Bit, Sentence } from '../bits/bit.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { nearestOption, takes, withNumber, withOption } from './change-call.ts'
import type { Remembered } from './remembered.ts'

export const callReading = (
  call: CallRead,
  does: 'compute' | 'record' | 'set' = 'compute',
  leftOut: readonly string[] = [],
): TalkReading => ({
  kind: 'call',
  call,
  does,
  leftOut,
})

/** Steps of a jar of which the amounts are changed by working out its syrup anew. */
export const OF_JAR = /^jar (?:strain|sweeten|show|filter|taste)$/

/** The call that a change is of. */
export const changedOf = (call: CallRead): CallRead =>
  OF_JAR.test(call.command) && call.options.jar !== undefined
    ? { command: 'syrup', options: { jar: call.options.jar } }
    : call

export type Rule = (sentence: Sentence, last: CallRead, said: Remembered) => TalkReading | null

export const isAmountBit = ({ kind, role }: Bit): boolean =>
  (kind === 'volume' && role !== 'of_water') || kind === 'mass'

/** A number alone, in place of what it can only be. */
export function setTo(bit: Bit, call: CallRead, isInstead: boolean): TalkReading | null {
  const { kind, value, text } = bit
  if (kind === 'strength' && takes(call.command, 'to-strength'))
    return callReading(withOption(call, 'to-strength', text))
  if (kind === 'sweetness' && takes(call.command, 'to-sweetness'))
    return callReading(withOption(call, 'to-sweetness', text))
  if (kind === 'bottles' && takes(call.command, 'bottles')) return callReading(withOption(call, 'bottles', text))
  if (
    kind === 'bare' &&
    value >= 10 &&
    value <= 60 &&
    takes(call.command, 'to-strength') &&
    call.options.of === undefined
  ) {
    return callReading(withOption(call, 'to-strength', `${text}%`))
  }
  if (kind === 'strength' && call.options.strength !== undefined) return callReading(withOption(call, 'strength', text))
  if (kind === 'volume' && call.options.pour !== undefined) return callReading(withOption(call, 'pour', text))
  if (!isInstead) return null
  const digits = /\d+(?:[.,]\d+)?/.exec(text)?.[0] ?? ''
  const option = nearestOption(call, value)
  if (kind === 'bare' && option !== null) return callReading(withNumber(call, option, digits))
  if (kind === 'volume') {
    const liquid = ['infusion', 'spirit', 'liqueur', 'measured'].find((name) => call.options[name] !== undefined)
    return liquid === undefined
      ? null
      : callReading(withOption(call, liquid, call.options[liquid]!.replace(/^[\d.,]+\s*\p{L}+/u, text)))
  }
  return null
}

export const isLiquidBit = ({ kind }: Bit): boolean =>
  kind === 'volume' || kind === 'spirit' || kind === 'strength' || kind === 'bottles'
