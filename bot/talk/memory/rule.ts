import type { Bit, Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled } from '../bits/jars-of.ts'
import type { CallRead, QuestionAbout, TalkReading } from '../frames/reading.ts'
import { NUMBER, numberOf } from '../frames/typed-number.ts'
import { forBottles, nearestOption, takes, withNumber, withOption } from './change-call.ts'
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

/** Worked out, and in no jar yet: what is asked or wished next is of it. */
export const WORKED_OUT = /^(?:plan|again|syrup|mix|dilute)$/

const asking = (call: CallRead, about: QuestionAbout, choices: readonly CallRead[] = []): TalkReading => ({
  kind: 'question',
  call,
  about,
  choices,
  leftOut: [],
})

/** Which way it is read; each choice is the whole line. */
export const eitherOf = (call: CallRead, choices: readonly CallRead[]): TalkReading =>
  asking(call, { kind: 'which_reading' }, choices)

/** Which of several is meant; each choice is the whole line. */
export const whichJar = (call: CallRead, choices: readonly CallRead[]): TalkReading =>
  asking(call, { kind: 'which_jar' }, choices)

/** What a call still takes is asked for. */
export const lacking = (call: CallRead, option: string): TalkReading => asking(call, { kind: 'lacks', option })

/** Steps of a jar of which the amounts are changed by working out its syrup anew. */
export const OF_JAR = /^jar (?:strain|sweeten|show|filter|taste)$/

/** What was recorded is not changed by a word, but undone, or answered with what comes next. */
export const RECORDED = /^jar (?!list|tag|label)/

/** `Opened one`, `gave two to the choir`: bottles that went are written down. */
export const tellsOfBottles = ({ command, options }: CallRead): boolean =>
  command === 'bottles' && (options.given ?? options.opened) !== undefined

/** Past its syrup: what there is will be drunk. */
const FINISHED: ReadonlySet<TalkJar['stage']> = new Set(['sweetened', 'resting', 'ready'])

/** The call that a change is of; a jar that has its syrup is made another by what goes in besides. */
export function changedOf(call: CallRead, jars: readonly TalkJar[] = []): CallRead {
  const { jar } = call.options
  if (!OF_JAR.test(call.command) || jar === undefined) return call
  const stage = jarCalled(jar, jars)?.stage
  return { command: stage !== undefined && FINISHED.has(stage) ? 'adjust' : 'syrup', options: { jar } }
}

export type Rule = (sentence: Sentence, last: CallRead, said: Remembered) => TalkReading | null

/** Everything that is said with a number, but for days. */
export const numbersOf = ({ bits }: Sentence): readonly Bit[] =>
  bits.filter(({ kind, text }) => /\d/.test(text) && kind !== 'date')

const FIRST_MEASURE = new RegExp(String.raw`^${NUMBER}\s*\p{L}+`, 'u')
const FIRST_NUMBER = new RegExp(NUMBER, 'u')

/** The first number of a text, with its fraction; empty where there is none. */
export const digitsOf = ({ kind, text }: Bit): string =>
  // `4/5` is a rating out of five.
  (kind === 'rating' ? /\d+(?:[.,]\d+)?/ : FIRST_NUMBER).exec(text)?.[0] ?? ''

export const isAmountBit = ({ kind, role }: Bit): boolean =>
  (kind === 'volume' && role !== 'of_water') || kind === 'mass'

/** From here on no liqueur is wished so strong, % vol: it is what there is. */
export const NO_LIQUEUR = 55

/** Wished strengths of a usual liqueur, % vol. */
const USUAL = { least: 15, most: 50 } as const

/** A strength in place of what it can only be: that of the spirit, of the infusion, or the wished one. */
function strengthSet(call: CallRead, text: string, value: number): TalkReading | null {
  const { spirit, strength } = call.options
  if (value > NO_LIQUEUR && strength !== undefined && call.command !== 'serving')
    return callReading(withOption(call, 'strength', text))
  if (value > NO_LIQUEUR && spirit !== undefined && /\d\s*%/.test(spirit)) {
    return callReading(withOption(call, 'spirit', spirit.replace(/\d+(?:[.,]\d+)?\s*%/, text)))
  }
  if (takes(call.command, 'to-strength')) return callReading(withOption(call, 'to-strength', text))
  return strength === undefined ? null : callReading(withOption(call, 'strength', text))
}

/** A number so large that nobody counts pieces or reads strengths by it. */
const LEAST_ML = 150
/** No liqueur is sweeter, g/L. */
const MOST_SWEET = 450

/** How many pieces a number may be, where a plan counts so many now. */
function countSet(call: CallRead, value: number, text: string): TalkReading | null {
  // From here on a number is one of ml, where a liquid was worked out.
  const liquid = ['infusion', 'spirit', 'liqueur'].find((name) => call.options[name] !== undefined)
  const sweetness = Number(/^\d+/.exec(call.options['to-sweetness'] ?? '')?.[0])
  const isSweetness = sweetness > 0 && value <= MOST_SWEET && Math.abs(Math.log(value / sweetness)) < Math.log(2)
  if (isSweetness) return callReading(withOption(call, 'to-sweetness', `${text} g/L`))
  if (value >= LEAST_ML && liquid !== undefined && !call.options.of?.includes(text))
    return callReading(withOption(call, liquid, call.options[liquid]!.replace(FIRST_MEASURE, `${text} ml`)))
  const option = nearestOption(call, value)
  const now = numberOf(FIRST_NUMBER.exec(option === null ? '' : (call.options[option] ?? ''))?.[0] ?? '') ?? Number.NaN
  const isFar = now > 0 && Math.abs(Math.log(value / now)) > Math.log(1.6)
  const isStrength = value >= USUAL.least && value <= USUAL.most && takes(call.command, 'to-strength')
  if (isStrength && (isFar || option === 'to-strength' || call.options.of === undefined))
    return callReading(withOption(call, 'to-strength', `${text}%`))
  return option === null ? null : callReading(withNumber(call, option, text))
}

/** A number alone, in place of what it can only be. */
export function setTo(bit: Bit, call: CallRead, isInstead: boolean): TalkReading | null {
  const { kind, value, text } = bit
  // `Down to 60` is where the spirit is to come.
  if (kind === 'strength' && bit.role === 'want' && call.command === 'dilute')
    return callReading(withOption(call, 'to-strength', text))
  if (kind === 'strength') return strengthSet(call, text, value)
  if (kind === 'sweetness' && takes(call.command, 'to-sweetness'))
    return callReading(withOption(call, 'to-sweetness', text))
  if (kind === 'bottles' && takes(call.command, 'bottles')) return callReading(forBottles(call, text))
  if (kind === 'volume' && call.options.pour !== undefined) return callReading(withOption(call, 'pour', text))
  if (!isInstead) return null
  if (kind === 'bare') return countSet(call, value, text)
  if (kind !== 'volume') return null
  const liquid = ['infusion', 'spirit', 'liqueur', 'measured'].find((name) => call.options[name] !== undefined)
  if (liquid === undefined) return null
  return callReading(withOption(call, liquid, call.options[liquid]!.replace(FIRST_MEASURE, text)))
}

export const isLiquidBit = ({ kind }: Bit): boolean =>
  kind === 'volume' || kind === 'spirit' || kind === 'strength' || kind === 'bottles'
