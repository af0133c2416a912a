import { liquidsIn, spiritText } from '../frames/liquids.ts'
import { plantText } from '../frames/slots.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import type { CallRead, TalkReading } from '../reader/reading.ts'
import { answered } from './answer-question.ts'
import {
  nearestOption,
  replaced,
  scaled,
  strengthened,
  sweetened,
  takes,
  withNumber,
  withOption,
} from './change-call.ts'
import type { Remembered } from './remembered.ts'

const callReading = (call: CallRead, does: 'compute' | 'record' | 'set' = 'compute', leftOut: readonly string[] = []): TalkReading => ({
  kind: 'call',
  call,
  does,
  leftOut,
})

/** Steps of a jar of which the amounts are changed by working out its syrup anew. */
const OF_JAR = /^jar (?:strain|sweeten|show|filter|taste)$/

/** The call that a change is of. */
const changedOf = (call: CallRead): CallRead =>
  OF_JAR.test(call.command) && call.options.jar !== undefined ? { command: 'syrup', options: { jar: call.options.jar } } : call

type Rule = (sentence: Sentence, last: CallRead, said: Remembered) => TalkReading | null

const isAmountBit = ({ kind, role }: Bit): boolean => (kind === 'volume' && role !== 'of_water') || kind === 'mass'

/** `12 lemons not 10`, `no, 700 not 750`, `28 instead of 30`. */
const corrected: Rule = ({ bits, typed, has }, last) => {
  const numbers = bits.filter(({ kind, text }) => /\d/.test(text) && kind !== 'date')
  const not = typed.tokens.findIndex(({ text }) => text === 'not' || text === 'non')
  const of = typed.tokens.findIndex(({ text }, at) => text === 'of' && typed.tokens[at - 1]?.text === 'instead')
  const mark = not > 0 ? not : of
  const digits = ({ text }: Bit): string => /\d+(?:[.,]\d+)?/.exec(text)?.[0] ?? ''
  if (mark !== -1 && numbers.length === 2) {
    const right = numbers.find(({ to }) => to <= mark) ?? numbers.findLast(({ from }) => from > mark)
    const wrong = numbers.find((bit) => bit !== right)
    const changed = right === undefined || wrong === undefined ? null : replaced(last, digits(wrong), digits(right))
    return changed === null ? null : callReading(changed)
  }
  const [only, another] = numbers
  if (only === undefined || another !== undefined || !has('instead', 'not_so')) return null
  return setTo(only, changedOf(last), true)
}

/** A number alone, in place of what it can only be. */
function setTo(bit: Bit, call: CallRead, isInstead: boolean): TalkReading | null {
  const { kind, value, text } = bit
  if (kind === 'strength' && takes(call.command, 'to-strength')) return callReading(withOption(call, 'to-strength', text))
  if (kind === 'sweetness' && takes(call.command, 'to-sweetness')) return callReading(withOption(call, 'to-sweetness', text))
  if (kind === 'bottles' && takes(call.command, 'bottles')) return callReading(withOption(call, 'bottles', text))
  if (kind === 'bare' && value >= 10 && value <= 60 && takes(call.command, 'to-strength') && call.options.of === undefined) {
    return callReading(withOption(call, 'to-strength', `${text}%`))
  }
  if (!isInstead) return null
  const digits = /\d+(?:[.,]\d+)?/.exec(text)?.[0] ?? ''
  const option = nearestOption(call, value)
  if (kind === 'bare' && option !== null) return callReading(withNumber(call, option, digits))
  if (kind === 'volume') {
    const liquid = ['infusion', 'spirit', 'liqueur', 'measured'].find((name) => call.options[name] !== undefined)
    return liquid === undefined ? null : callReading(withOption(call, liquid, call.options[liquid]!.replace(/^[\d.,]+\s*\p{L}+/u, text)))
  }
  return null
}

const tasteChanged: Rule = (sentence, last) => {
  const { has } = sentence
  const call = changedOf(last)
  const isSlight = has('slightly')
  let changed: CallRead | null = null
  if (takes(call.command, 'to-sweetness') && (has('drier') || has('sweeter'))) changed = sweetened(call, has('sweeter'), isSlight)
  if (takes(call.command, 'to-strength') && (has('stronger') || has('weaker'))) changed = strengthened(changed ?? call, has('stronger'), isSlight)
  if (changed === null) return null
  // A target that is said with it goes before the step.
  const target = sentence.bits.find(({ kind }) => kind === 'strength' || kind === 'sweetness')
  return target === undefined ? callReading(changed) : (setTo(target, changed, false) ?? callReading(changed))
}

const styled: Rule = (sentence, last) => {
  const call = changedOf(last)
  if (!takes(call.command, 'to-sweetness') || sentence.bits.some(isAmountBit)) return null
  const style = sentence.has('wish_dry') ? 'dry' : sentence.has('wish_medium') ? 'everyday' : sentence.has('wish_rich') ? 'rich' : null
  return style === null || sentence.typed.tokens.length > 7 ? null : callReading(withOption(call, 'to-sweetness', style))
}

const resized: Rule = ({ has, bits }, last) => {
  if (bits.length > 0 && !bits.every(({ kind }) => kind === 'bare')) return null
  const factor = has('twice') ? 2 : has('thrice') ? 3 : has('halve') ? 0.5 : null
  const changed = factor === null ? null : scaled(last, factor)
  return changed === null ? null : callReading(changed)
}

const bottled: Rule = ({ bits }, last) => {
  const bottles = bits.find(({ kind, role }) => kind === 'bottles' && role !== 'of_spirit')
  const others = bits.filter((bit) => bit !== bottles)
  if (bottles === undefined || others.some(({ kind }) => kind !== 'date') || !takes(last.command, 'bottles')) return null
  const { spirit, ...options } = last.options
  // How much of it there is comes from the bottles then; how strong it is stays.
  const strength = /(\d+(?:[.,]\d+)?)\s*%/.exec(spirit ?? '')?.[0]
  const kept = last.command === 'plan' && spirit !== undefined ? { ...plantsWithout(options), ...(strength !== undefined && { strength }) } : last.options
  return callReading({ command: last.command, options: { ...kept, bottles: bottles.text } })
}

/** Plants by name alone: how much of them follows from the bottles. */
function plantsWithout({ of, ...options }: Readonly<Record<string, string>>): Record<string, string> {
  if (of === undefined) return options
  const named = of.split('+').map((item) => item.trim().replace(/^[\d.,½¼¾]+\s*(?:(?:g|kg|ml|l|lb|oz)\b)?\s*/i, ''))
  return { of: named.join(' + '), ...options }
}

const otherSpirit: Rule = (sentence, last) => {
  const word = sentence.bits.find(({ kind }) => kind === 'spirit')
  const strength = sentence.bits.find(({ kind, role }) => kind === 'strength' && role !== 'want')
  if ((word === undefined && strength === undefined) || !sentence.has('only_have', 'instead', 'with_amounts')) return null
  if (sentence.bits.some(({ kind }) => kind === 'plant') || !takes(last.command, 'spirit')) return null
  const [liquid] = liquidsIn(sentence)
  if (liquid !== undefined) return callReading(withOption(last, 'spirit', spiritText(word === undefined || liquid.word !== null ? liquid : { ...liquid, word })))
  const volume = /^[\d.,]+\s*(?:x\s*[\d.,]+\s*)?\p{L}+/u.exec(last.options.spirit ?? '')?.[0]
  const abv = strength?.text ?? (word !== undefined && word.value > 0 ? `${word.value}%` : null)
  if (abv === null) return null
  const name = word === undefined || /alco|spirit|alcol/.test(word.text) ? null : word.text.toLowerCase()
  if (volume === undefined) return callReading(withOption(last, 'strength', abv))
  return callReading(withOption(last, 'spirit', [volume, name, abv].filter((part) => part !== null).join(' ')))
}

const named = (item: string): string => item.toLowerCase()

const withoutPlant: Rule = ({ bits }, last) => {
  const plant = bits.find(({ kind, role }) => kind === 'plant' && role === 'left_out')
  const { of } = last.options
  if (plant === undefined || of === undefined) return null
  const stem = plant.text.toLowerCase().replace(/(?:es|s|i|e|o|a)$/, '')
  const items = of.split('+').map((item) => item.trim())
  const kept = items.filter((item) => !named(item).includes(stem))
  return kept.length === items.length || kept.length === 0 ? null : callReading(withOption(last, 'of', kept.join(' + ')))
}

/** `and a cinnamon stick too` adds a plant, `what about oranges` puts it in the place of the one there is. */
const otherPlants: Rule = ({ bits, typed, has }, last) => {
  const plants = bits.filter(({ kind, role }) => kind === 'plant' && role !== 'left_out')
  const { of } = last.options
  const [first] = typed.tokens
  if (plants.length === 0 || of === undefined || bits.some(isLiquidBit)) return null
  const text = plants.map((plant) => plantText(bits, plant, typed)).join(' + ')
  const isAdded = /^(?:and|plus|add|also|with|e|con|aggiungi|anche)$/.test(first?.text ?? '') || typed.tokens.some(({ text: word }) => /^(?:too|also|anche|aswell)$/.test(word))
  if (last.command === 'botanical' || last.command === 'cautions') {
    return isAdded || has('instead', 'tell_me_about') || bits.length === typed.tokens.filter(({ kind }) => kind === 'word').length ? callReading(withOption(last, 'of', plants[0]!.text.toLowerCase())) : null
  }
  if (last.command !== 'plan') return null
  if (isAdded && typed.tokens.length <= 10) return callReading(withOption(last, 'of', `${of} + ${text}`))
  const isOne = !of.includes('+') && plants.length === 1
  if (!has('instead') || !isOne) return null
  const amount = plants[0]!.with === undefined ? /^[\d.,½¼¾]+(?:\s*(?:g|kg)\b)?/.exec(of)?.[0] : undefined
  return callReading(withOption(last, 'of', [amount, text].filter((part) => part !== undefined).join(' ')))
}

const isLiquidBit = ({ kind }: Bit): boolean => kind === 'volume' || kind === 'spirit' || kind === 'strength' || kind === 'bottles'

const inMeasures: Rule = ({ has, bits, typed }, last) => {
  if (bits.length > 0 || typed.tokens.length > 8) return null
  const kitchen = has('us_measures') ? 'us' : has('imperial_measures') ? 'imperial' : has('metric_measures') ? 'metric' : null
  return kitchen === null ? null : { kind: 'call', call: last, does: 'compute', leftOut: [], kitchen }
}

const readyBy: Rule = ({ bits, has }, last) => {
  const [date, another] = bits
  if (date?.kind !== 'date' || another !== undefined || !has('by_day') || !takes(last.command, 'ready-by')) return null
  return callReading(withOption(last, 'ready-by', date.text))
}

const target: Rule = ({ bits, typed, has }, last) => {
  const [only, another] = bits
  if (only === undefined || another !== undefined || typed.tokens.length > 8 || has('how_much', 'how_long')) return null
  return setTo(only, changedOf(last), false)
}

const begun: Rule = ({ has, bits }, last, { offered }) => {
  if (!has('start_word') || bits.some(isAmountBit)) return null
  const start = offered.find(({ command }) => command === 'jar start')
  if (start !== undefined) return callReading(start, 'record')
  if (last.command !== 'plan') return null
  const { start: when, ...options } = last.options
  return callReading({ command: 'jar start', options: { ...options, ...(when !== undefined && { when }) } }, 'record')
}

/** What an answer offers that is done by saying that it was. */
const DONE = /^jar (?:sweeten|strain|filter|shake|bottle)$/

const agreed: Rule = ({ has, bits, typed }, _last, { offered }) => {
  if (bits.length > 0 || typed.tokens.length > 6 || has('asking')) return null
  if (has('done_word')) {
    const step = offered.find(({ command }) => DONE.test(command))
    return step === undefined ? null : callReading(step, 'record')
  }
  const [first] = offered
  if (!has('yes') || has('no') || first === undefined || offered.length !== 1) return null
  return callReading(first, first.command.startsWith('jar ') ? 'record' : 'compute')
}

const undone: Rule = ({ has }, last) => {
  if (!has('take_back') || !/^jar (?!undo|list|show|discard|empty)/.test(last.command)) return null
  const jar = last.options.jar ?? last.options.name
  return jar === undefined ? null : callReading({ command: 'jar undo', options: { jar } }, 'record')
}

/** `that was the ginger, not the lemon`: what was recorded is undone and said of the other jar, each by its line. */
const ofOtherJar: Rule = ({ has, bits }, last) => {
  const { jar } = last.options
  if (!has('was_other_jar') || jar === undefined || !last.command.startsWith('jar ')) return null
  const names = bits.filter(({ kind }) => kind === 'plant' || kind === 'jar').map(({ text }) => text.toLowerCase())
  const other = names.find((name) => name !== jar.toLowerCase())
  if (other === undefined) return null
  const choices: readonly CallRead[] = [{ command: 'jar undo', options: { jar } }, withOption(last, 'jar', other)]
  return { kind: 'question', call: choices[0]!, about: { kind: 'which_reading' }, choices, leftOut: [] }
}

const shownAgain: Rule = ({ has, bits, typed }) => {
  const isShort = typed.tokens.filter(({ kind }) => kind === 'word').length <= 6
  if (has('how_sure')) return { kind: 'last', what: 'how_sure' }
  if (has('why') && (isShort || /^(?:why|perche)$/.test(typed.tokens[0]?.text ?? '')) && !has('cloud', 'bitter', 'mould', 'solid_ice')) return { kind: 'last', what: 'why' }
  if (bits.length > 0 || !isShort) return null
  if (has('more') && !has('sweeter', 'stronger', 'what_is_on')) return { kind: 'last', what: 'more' }
  return has('no') && !has('yes') && typed.tokens.length <= 3 ? { kind: 'last', what: 'let_be' } : null
}

const RULES: readonly Rule[] = [
  ofOtherJar, undone, corrected, withoutPlant, tasteChanged, resized, bottled, otherSpirit, begun, inMeasures, readyBy, otherPlants, styled, agreed, target, shownAgain,
]

/** So many amounts and things make a new question, whatever else is said. */
const NEW = 4

/** What a sentence means after what was said before; null where it stands by itself. Nothing is edited: a call is changed, and run again. */
export function followUp(sentence: Sentence, said: Remembered): TalkReading | null {
  const answer = answered(sentence, said.question)
  if (answer !== null) return answer
  const { call } = said
  if (call === null) return null
  const amounts = sentence.bits.filter(({ kind }) => kind !== 'date').length
  if (amounts >= NEW && !sentence.has('not_so', 'instead')) return null
  for (const rule of RULES) {
    const reading = rule(sentence, call, said)
    if (reading !== null) return reading
  }
  return null
}

