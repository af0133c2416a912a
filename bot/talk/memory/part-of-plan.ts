import type { Bit, Sentence } from '../bits/bit.ts'
import { scaledText } from '../frames/scaled-text.ts'
import { scaled, withOption } from './change-call.ts'
import { isOf } from './plan-rules.ts'
import { callReading, eitherOf, type Rule } from './rule.ts'
import { factorSaid } from './taste-rules.ts'

/** Between how much of it and what of. */
const OF_IT =
  /^(?:the|of|as|many|much|my|those|these|that|this|amount|quantity|number|weight|il|lo|la|i|gli|le|l|di|del|dello|della|dei|degli|delle|tanti|tante|numero|quantita)$/

/** `Use half the damsons`: of one plant of the recipe so much, the rest stays. */
export const partOfPlant: Rule = ({ bits, typed, spans }, last) => {
  const { of } = last.options
  const factor = factorSaid({ spans, typed })
  if (last.command !== 'plan' || of === undefined || factor === null) return null
  // Of `two thirds` the two is no amount.
  const [plant, another] = bits.filter(({ to }) => to > factor.to)
  const isAlone = another === undefined && bits.every((bit) => bit === plant || bit.from >= factor.from)
  if (!isAlone || plant?.kind !== 'plant' || plant.role === 'left_out') return null
  if (plant.with !== undefined || factor.to > plant.from) return null
  if (!typed.tokens.slice(factor.to, plant.from).every(({ text }) => OF_IT.test(text))) return null
  const items = of.split('+').map((item) => item.trim())
  const less = items.map((item) => (isOf(item, plant) ? scaledText('of', item, factor.times) : item))
  return less.every((item, at) => item === items[at]) ? null : callReading(withOption(last, 'of', less.join(' + ')))
}

const VESSEL =
  /^(?:jars?|demijohns?|carboys?|kilners?|crocks?|containers?|vessels?|jugs?|growlers?|vas[oi]|barattol[oi]|damigian[ae]|boccion[ei]|recipient[ei])$/
const JOINS_SIZE = /^(?:of|da|di)$/

/** The jar that a volume is the size of: `a 2 litre Kilner jar`, `un vaso da 2 litri`. */
export function isSizeOfJar({ from, to }: Bit, { tokens }: Sentence['typed']): boolean {
  const behind = tokens.slice(to, to + 3).filter(({ kind }) => kind === 'word')
  const before = JOINS_SIZE.test(tokens[from - 1]?.text ?? '') ? tokens[from - 2] : undefined
  return behind.some(({ text }) => VESSEL.test(text)) || VESSEL.test(before?.text ?? '')
}

/** `Make it in a 2 litre jar`: as much as fits; where all of it does, it may stay or be as much as the jar takes. */
export const inJarOfSize: Rule = ({ bits, typed }, last, { drink }) => {
  const [size, another] = bits
  const jarMl = drink?.jarMl ?? null
  if (last.command !== 'plan' || jarMl === null || another !== undefined) return null
  if (size?.kind !== 'volume' || !isSizeOfJar(size, typed)) return null
  const fitting = size.value === jarMl ? null : scaled(last, size.value / jarMl)
  if (fitting === null) return callReading(last)
  return size.value < jarMl ? callReading(fitting) : eitherOf(last, [last, fitting])
}
