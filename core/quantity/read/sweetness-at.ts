import type { Sweetness } from '../quantities.ts'
import { type Head, headAt, measureOf, unique } from './measure-at.ts'
import type { TypedText } from './tokens.ts'
import type { Unit } from './units.ts'

/** What a sweetness without a unit is taken as. */
export const bareGPerL: Unit = { key: 'g/l', kind: 'sweetness', factor: 1, zero: 0, assumed: ['grams_per_litre'] }

/** The styles that have a name, g/L. */
export const styleSweetnessGPerL = { dry: 120, everyday: 190, rich: 270 } as const

/** What liqueurs that are sold have of sugar, g/L. Source: the UK food tables (sugars of liqueurs). */
export const shopSweetnessGPerL = { least: 230, most: 310 } as const

const isStyle = (word: string): word is keyof typeof styleSweetnessGPerL => Object.hasOwn(styleSweetnessGPerL, word)

/** `dry`, `everyday` or `rich` at piece `at`, else null. */
export const styleAt = (typed: TypedText, at: number): { sweetness: Sweetness; next: number } | null => {
  const word = typed.tokens[at]?.text ?? ''
  if (!isStyle(word)) return null
  const sugarGPerL = styleSweetnessGPerL[word]
  const rest = { halfDigitGPerL: 0, statedGPerL: null, unit: word, assumed: [] }
  return { sweetness: { kind: 'sweetness', sugarGPerL, ...rest }, next: at + 1 }
}

/** The sweetness of a head that was read as one. */
export const sweetnessOf = (typed: TypedText, head: Head): { sweetness: Sweetness; next: number } => {
  const { value, halfDigit, stated, unit, assumed, next } = measureOf(typed, head)
  const sweetness: Sweetness = {
    kind: 'sweetness',
    sugarGPerL: value,
    halfDigitGPerL: halfDigit,
    statedGPerL: stated,
    unit: unit.key,
    assumed: unique(assumed),
  }
  return { sweetness, next }
}

/** A sweetness at piece `at`; a bare number is g/L. */
export const sweetnessAt = (typed: TypedText, at: number): { sweetness: Sweetness; next: number } =>
  sweetnessOf(typed, headAt(typed, at, ['sweetness'], bareGPerL))
