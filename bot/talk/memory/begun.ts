import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { isPastDay } from '../bits/past-day.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { withOption } from './change-call.ts'
import { nameSaid } from './name-said.ts'
import { isOf } from './plan-rules.ts'
import { callReading, type Rule } from './rule.ts'

/** `I started it three weeks ago`: what was planned, on its day. */
const STARTED =
  /^(?:(?:yes|ok|actually|oh|si) )*(?:(?:(?:i|we|ive|weve) )?(?:have )?(?:already )?(?:started|begun|began)(?: (?:it|that|this|them|on|from|about|around|last|yesterday))?\b|(?:i|we|ive|weve) (?:have )?(?:already )?made (?:it|that|this)\b|(?:l ho|li ho|le ho|l abbiamo) (?:gia )?(?:iniziat|cominciat|avviat)[oaie]\b)/

/** `It’s in the jar now`, `all in the jar`. */
const IN_JAR =
  /^(?:(?:ok|okay|right|so|yes|done|there|and|,) )*(?:its|it s|it is|theyre|they are|thats|all|everything|everythings|everything is|e tutto) (?:all |now |already )?(?:in|nel) (?:(?:the|a|its|my|our) )?(?:jar|vaso)\b/u

/** `It’s in the jar now, with 400 g of sugar`: what was planned is begun, and sugar went in with it; null where anything else is told. */
function inJarWithSugar({ bits, typed, has }: Sentence, planned: CallRead): TalkReading | null {
  const words = wordsFrom(typed).replace(/['’]/gu, '')
  const [sugar, another] = bits.filter(({ role }) => role === 'of_sugar')
  const isOther = bits.some(
    (bit) => bit !== sugar && bit.kind !== 'sugar' && (bit.kind !== 'date' || bit.text !== 'today'),
  )
  if (!IN_JAR.test(words) || sugar === undefined || another !== undefined || isOther || isUnsure(typed, has))
    return null
  return callReading(withOption(planned, 'sugar', sugar.text), 'record')
}

const pastDay = (bits: readonly Bit[]): Bit | null => {
  const days = bits.filter(isPastDay)
  return days.length === 1 ? days[0]! : null
}

/** Told of the plan by its plant, and with no amounts of its own. */
const isOfPlanned = (bits: readonly Bit[], { options }: CallRead): boolean =>
  bits.length === 2 && bits.every((bit) => bit.kind === 'date' || (bit.kind === 'plant' && isOf(options.of ?? '', bit)))

const isUnsure = ({ tokens }: Sentence['typed'], has: Sentence['has']): boolean =>
  has('denial', 'hypothesis', 'asking', 'wish') || tokens.some(({ text }) => text === '?')

/** `Ok start reminding me again` begins no jar. */
const OF_REMINDING = /\b(?:start|begin) (?:again )?(?:remind|nagg|nudg|messag|text|ping|notify|writ|bother|pester)ing\b/

export const begun: Rule = (sentence, last, { offered }) => {
  const { has, bits, typed } = sentence
  const [day, another] = bits
  const planned = last.command === 'plan' ? offered.find(({ command }) => command === 'jar start') : undefined
  const sugared = planned === undefined ? null : inJarWithSugar(sentence, planned)
  if (sugared !== null) return sugared
  const isTold = STARTED.test(wordsFrom(typed)) && !has('denial', 'hypothesis')
  if (planned !== undefined && isTold && day?.kind === 'date' && another === undefined && !has('asking')) {
    const called = nameSaid(typed, day)
    const dated = withOption(planned, 'when', day.text)
    return callReading(called === undefined ? dated : withOption(dated, 'name', called), 'record')
  }
  const past = pastDay(bits)
  if (planned !== undefined && past !== null && isOfPlanned(bits, planned) && has('started') && !isUnsure(typed, has))
    return callReading(withOption(planned, 'when', past.text), 'record')
  const name = nameSaid(typed, past)
  const isAsked = has('denial') || OF_REMINDING.test(wordsFrom(typed)) || typed.tokens.some(({ text }) => text === '?')
  const isOther = bits.some((bit) => bit !== past && (bit.kind !== 'date' || bit.text !== 'today'))
  if (!has('start_word') || isAsked || (isOther && name === undefined)) return null
  const start = offered.find(({ command }) => command === 'jar start')
  const named = (call: CallRead): TalkReading => {
    const dated = past === null ? call : withOption(call, 'when', past.text)
    return callReading(name === undefined ? dated : withOption(dated, 'name', name), 'record')
  }
  if (start !== undefined) return named(start)
  if (last.command !== 'plan') return null
  const { start: when, ...options } = last.options
  return named({ command: 'jar start', options: { ...options, ...(when !== undefined && { when }) } })
}
