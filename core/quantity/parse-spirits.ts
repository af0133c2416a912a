import { DomainError } from '../domain-error.ts'
import { amountAt, isAtStrength } from './amount-at.ts'
import type { SpiritPart, Strength } from './quantities.ts'
import { isBelowZero, readNumber } from './read-number.ts'
import { splitList } from './split-list.ts'
import { strengthAt } from './strength-at.ts'
import { shown, type TypedText, textFrom } from './typed-text.ts'
import { anyUnitAt } from './unit-at.ts'

/** What may stand before the amount; any other word there may be an option run into it. */
const DRINKS = new Set(
  (
    'vodka wodka gin rum grappa brandy whisky whiskey schnapps spirit spirits alcohol alcol alcool ethanol etanolo liquor ' +
    'grain neutral pure rectified food acquavite'
  ).split(' '),
)

/** A bottle as a measure. */
const BOTTLE = /^(?:(?:an?|one|una?|half an?|[0-9½.,/]+)\s*)?(?:bottles?|bottigli[ae])(?!\p{L})/iu

/** Whether a strength with its unit stands at piece `at`. */
const isStrength = (typed: TypedText, at: number): boolean => {
  const number = readNumber(typed, at)
  if (number === null) return false
  const after = typed.tokens[number.next]?.text === '±' ? number.next + 2 : number.next
  return anyUnitAt(typed, after)?.unit.kind === 'strength'
}

/** Where the strength begins: at once, or after words (`1 l vodka 40%`); -1 where there is none. */
const strengthStart = (typed: TypedText, from: number): number => {
  const { tokens } = typed
  if (tokens[from]?.kind === 'number') return from
  return tokens.findIndex(({ kind }, at) => at >= from && kind === 'number' && isStrength(typed, at))
}

const isOf = (word: string | undefined): boolean => word === 'of' || word === 'di'

/** Past what only joins, `of` or the `at` of `at 40%`. */
const pastJoint = (typed: TypedText, at: number): number =>
  isOf(typed.tokens[at]?.text) || isAtStrength(typed, at) ? at + 1 : at

/** Past the words of a drink and what joins them. */
const pastDrink = (typed: TypedText, at: number): number => {
  const { text } = typed.tokens[at] ?? {}
  return text !== undefined && (DRINKS.has(text) || isOf(text)) ? pastDrink(typed, at + 1) : at
}

interface Begun {
  /** Said before the amount; null where it is not. */
  readonly strength: Strength | null
  readonly words: readonly string[]
  /** Where the amount begins. */
  readonly next: number
}

/** `vodka 40%` of `vodka 40% 700 ml`: a drink, its strength or both before the amount. */
const beginning = (typed: TypedText): Begun => {
  const start = pastDrink(typed, 0)
  const words = [textFrom(typed, 0, start)]
  if (readNumber(typed, start) === null) return { strength: null, words: [], next: 0 }
  if (!isStrength(typed, start)) return { strength: null, words, next: start }
  const { strength, next } = strengthAt(typed, start)
  const amount = pastDrink(typed, next)
  if (readNumber(typed, amount) === null) return { strength: null, words: [], next: 0 }
  return { strength, words: [...words, textFrom(typed, next, amount)], next: amount }
}

const spiritOf = (typed: TypedText): SpiritPart => {
  if (BOTTLE.test(typed.text)) {
    throw new DomainError('ambiguous', 'bottle_without_size', { typed: shown(typed.text) })
  }
  const begun = beginning(typed)
  const { amount, next } = amountAt(typed, begun.next)
  const from = pastJoint(typed, next)
  const start = strengthStart(typed, from)
  const spirit = (strength: Strength | null, ...said: readonly string[]): SpiritPart => {
    const words = [...begun.words, ...said].filter((part) => part !== '').join(' ')
    return { amount, strength: strength ?? begun.strength, words }
  }
  if (start === -1) return spirit(null, textFrom(typed, from))
  if (isBelowZero(typed, start)) {
    throw new DomainError('bad_value', 'negative_number', { typed: shown(typed.text), wanted: 'strength' })
  }
  const { strength, next: end } = strengthAt(typed, start)
  if (begun.strength !== null) {
    throw new DomainError('bad_value', 'said_twice', { typed: shown(typed.text), kind: 'strength' })
  }
  const after = isOf(typed.tokens[end]?.text) ? end + 1 : end
  return spirit(strength, textFrom(typed, from, start), textFrom(typed, after))
}

/**
 * Spirits joined with `+`: `750 ml 75.5% + 375 ml 40% vodka`, `vodka 40% 700 ml`; what is said beside the amount and the
 * strength is `words`.
 */
export const parseSpirits = (text: string): readonly SpiritPart[] => splitList(text).map(spiritOf)
