import { plantText } from '../frames/plant-slots.ts'
import { withOption } from './change-call.ts'
import { callReading, isLiquidBit, type Rule } from './rule.ts'

/** Between one and the next. */
const AND = /^(?:and|plus|with|,|&|\+|e|ed|piu|con|also|a|an|un|una)$/

/** `Instead I take eight lemons and two oranges`: several, each with its amount and joined, in the place of all there were. */
export const severalInstead: Rule = ({ bits, typed, has }, last) => {
  const plants = bits.filter(({ kind }) => kind === 'plant')
  const [first] = plants
  const isCounted = plants.every(({ with: amount, role }) => amount !== undefined && role !== 'left_out')
  if (last.command !== 'plan' || last.options.of === undefined || first === undefined || plants.length < 2) return null
  if (!isCounted || !has('instead') || bits.some(isLiquidBit)) return null
  const isOf = (at: number): boolean => bits.some(({ from, to }) => from <= at && at < to)
  const between = typed.tokens.slice(first.to, plants.at(-1)!.from)
  if (!between.every(({ text }, at) => isOf(first.to + at) || AND.test(text))) return null
  return callReading(withOption(last, 'of', plants.map((plant) => plantText(bits, plant, typed)).join(' + ')))
}
