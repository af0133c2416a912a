import { DomainError } from '../../domain-error.ts'
import type { LiquidPart } from '../quantities.ts'
import { amountAt, isAtStrength } from './amount-at.ts'
import { isBelowZero, readNumber } from './read-number.ts'
import { strengthAt } from './strength-at.ts'
import { styleAt, sweetnessAt } from './sweetness-at.ts'
import { readText, shown, type TypedText, textFrom } from './tokens.ts'
import { anyUnitAt } from './unit-at.ts'
import type { Unit } from './units.ts'

/** A bottle as a measure. */
const BOTTLE = /^(?:(?:an?|one|una?|half an?|[0-9½.,/]+)\s*)?(?:bottles?|bottigli[ae])(?!\p{L})/iu

/** `dry` is a sweetness, but not in `London dry` and `dry gin`. */
const DRY_BEFORE = new Set(['london', 'extra', 'very', 'bone'])
const DRY_AFTER = new Set(['gin', 'gins', 'rum', 'vermouth', 'sherry', 'cider', 'wine', 'white', 'red', 'london'])

/** Signs that only part or hold together what was typed. */
const PUNCTUATION = new Set([',', '.', ';', ':', '(', ')', '[', ']', '-', '—', '/', '"', '“', '”', "'", '’', '@'])

/** `a 750-ml bottle`, `100-proof rum`. */
const HYPHENED = /(?<=[0-9])-(?=(?:ml|cl|dl|l|lt|litres?|liters?|proof|percent|years?)\b)/giu

/** Several of one size: `2 x 700 ml`, `2 bottles of 700 ml`. */
const SEVERAL =
  /(?<![0-9.,/½])([1-9][0-9]?) ?(?:[x×*]|bottles?(?: of)?|bottigli[ae](?: d[ai])?) ?(?=[0-9][0-9.,]* ?(?:ml|cl|dl|l|litres?|liters?|litr[oi]|fl|oz)(?!\p{L}))/iu

/** `a litre of gin`. */
const ONE_MEASURE = /^(?:an?|one|una?)(?= (?:litres?|liters?|litro|pint|quart|gallon|cup)(?!\p{L}))/iu

export interface Takes {
  /** Whether `dry` and `rich` are a sweetness. */
  readonly styles: boolean
}

type Quantities = Pick<LiquidPart, 'strength' | 'sweetness'> & { readonly amount: LiquidPart['amount'] | null }

/** What a piece begins, and where it ends; nothing is said of an age. */
interface Found {
  readonly says: Partial<Quantities>
  readonly next: number
}

const isOf = (word: string): boolean => word === 'of' || word === 'di'

/** The unit at piece `at`, or after the `±` there. */
const unitOf = (typed: TypedText, at: number): Unit | undefined => {
  const stated = typed.tokens[at]?.text === '±' ? readNumber(typed, at + 1) : null
  return anyUnitAt(typed, stated?.next ?? at)?.unit
}

const amountFound = (typed: TypedText, at: number): Found => {
  const { amount, next } = amountAt(typed, at)
  return { says: { amount }, next }
}

const strengthFound = (typed: TypedText, at: number): Found => {
  const { strength, next } = strengthAt(typed, at)
  return { says: { strength }, next }
}

const isDryDrink = ({ tokens }: TypedText, at: number): boolean =>
  DRY_BEFORE.has(tokens[at - 1]?.text ?? '') || DRY_AFTER.has(tokens[at + 1]?.text ?? '')

/** A number alone is a strength right after the amount, which ends at `from`, and at the end; else it is part of a name. */
const bareFound = (typed: TypedText, at: number, from: number, said: Quantities): Found | null => {
  const { tokens } = typed
  if (said.amount === null || said.strength !== null) return null
  const between = tokens.slice(from, at).filter(({ text }) => !isOf(text) && !PUNCTUATION.has(text))
  const isLast = readNumber(typed, at)!.next === tokens.length
  return between.length === 0 || isLast ? strengthFound(typed, at) : null
}

/** The quantity that begins at piece `at`; `from` is where the last one ended. */
function quantityAt(typed: TypedText, at: number, from: number, said: Quantities, takes: Takes): Found | null {
  if (isAtStrength(typed, at)) return strengthFound(typed, at + 1)
  const style = takes.styles && !isDryDrink(typed, at) ? styleAt(typed, at) : null
  if (style !== null) return { says: { sweetness: style.sweetness }, next: style.next }
  const number = readNumber(typed, at)
  if (number === null) return null
  const unit = unitOf(typed, number.next)
  if (isBelowZero(typed, at)) {
    const wanted = unit?.kind === 'strength' || said.amount !== null ? 'strength' : typed.wanted
    throw new DomainError('bad_value', 'negative_number', { typed: shown(typed.text), wanted })
  }
  if (unit === undefined) return bareFound(typed, at, from, said)
  if (unit.kind === 'volume' || unit.kind === 'mass') return amountFound(typed, at)
  if (unit.kind === 'strength') return strengthFound(typed, at)
  if (unit.kind === 'sweetness') {
    const { sweetness, next } = sweetnessAt(typed, at)
    return { says: { sweetness }, next }
  }
  // `12 years old`: of nothing that is reckoned.
  return unit.key === 'years' ? { says: {}, next: number.next } : null
}

/** As many of an amount. */
const times = (amount: LiquidPart['amount'], count: number): LiquidPart['amount'] => {
  const more = (value: number | null): number | null => (value === null ? null : value * count)
  return amount.kind === 'mass'
    ? {
        ...amount,
        massG: amount.massG * count,
        halfDigitG: amount.halfDigitG * count,
        statedG: more(amount.statedG),
      }
    : {
        ...amount,
        volumeMl: amount.volumeMl * count,
        halfDigitMl: amount.halfDigitMl * count,
        statedMl: more(amount.statedMl),
      }
}

/** Words between two quantities, without what only joins or parts them. */
function wordsBetween(typed: TypedText, from: number, until: number): string {
  const { tokens } = typed
  let [first, last] = [from, until]
  while (first < last && (PUNCTUATION.has(tokens[first]!.text) || (first === from && isOf(tokens[first]!.text))))
    first++
  while (last > first && PUNCTUATION.has(tokens[last - 1]!.text)) last--
  return textFrom(typed, first, Math.max(last, first))
}

const expectNew = (typed: TypedText, said: Quantities, says: Partial<Quantities>): void => {
  for (const kind of ['amount', 'strength', 'sweetness'] as const) {
    if (says[kind] === undefined || said[kind] === null) continue
    throw new DomainError('bad_value', 'said_twice', { typed: shown(typed.text), kind })
  }
}

/**
 * One liquid: an amount, a strength, a sweetness, in any order, and the words beside them: `vodka 1 l 40%`,
 * `500 ml orange liqueur 28% 250 g/L`. Which words are a drink is judged elsewhere.
 */
export function readLiquid(whole: TypedText, takes: Takes): LiquidPart {
  const spelt = whole.text.trim().replace(HYPHENED, ' ').replace(ONE_MEASURE, '1')
  const count = Number(SEVERAL.exec(spelt)?.[1] ?? 1)
  const typed = readText(spelt.replace(SEVERAL, ''), whole.wanted)
  if (BOTTLE.test(typed.text)) {
    throw new DomainError('ambiguous', 'bottle_without_size', { typed: shown(typed.text) })
  }
  const { tokens } = typed
  const words: string[] = []
  let said: Quantities = { amount: null, strength: null, sweetness: null }
  let strengthTyped = ''
  let from = 0
  for (let at = 0; at < tokens.length; ) {
    const found = quantityAt(typed, at, from, said, takes)
    if (found === null) {
      at++
      continue
    }
    expectNew(typed, said, found.says)
    said = { ...said, ...found.says }
    words.push(wordsBetween(typed, from, at))
    if (found.says.strength !== undefined) strengthTyped = textFrom(typed, at, found.next)
    from = found.next
    at = found.next
  }
  words.push(wordsBetween(typed, from, tokens.length))
  const first = tokens.findIndex((_, at) => readNumber(typed, at) !== null)
  // Says what is wrong with the amount that is missing.
  const amount = said.amount ?? amountAt(typed, Math.max(0, first)).amount
  const named = words.filter((part) => part !== '').join(' ')
  return { ...said, amount: times(amount, count), words: named, typed: spelt, strengthTyped }
}
