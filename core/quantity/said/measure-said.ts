import type { UnitKind } from '../problems.ts'
import { mendedFrom, type TypedText, textFrom, wordAt } from '../read/tokens.ts'
import { anyUnitAt, unitAt } from '../read/unit-at.ts'
import { toCanonical, type Unit } from '../read/units.ts'
import { isCalledBottle } from '../us-bottles.ts'
import { moreAt, roundly } from './more-said.ts'
import { type NumberSaid, numberSaid } from './number-said.ts'

/** An amount in a sentence: where it ends, what it is, and the text that an option takes for it. */
export interface MeasureSaid {
  readonly kind: UnitKind
  /** ml, g, % vol, g/L, °C, days. */
  readonly value: number
  readonly unit: Unit
  /** The number as an option takes it, and the unit as typed. */
  readonly numberText: string
  readonly unitText: string
  readonly next: number
}

const ABOUT = new Set(['±'])

/** Kinds in the order in which a unit that is two of them is read: degrees are a strength first. */
const KINDS: readonly UnitKind[] = ['sweetness', 'volume', 'mass', 'strength', 'temperature', 'span']

/** Words that look like units of one letter and are none where a word follows: `i d`, `in c`. */
const NEEDS_FIGURES = new Set(['c', 'f', 'd', 'h', 'w', 'y', 'l', 'g', 'vol', 'degrees', 'gr'])

/** `0.9 of a litre`: of less than one. */
function isPartOf(typed: TypedText, { value, next }: NumberSaid): boolean {
  const [of, article] = [typed.tokens[next]?.text, typed.tokens[next + 1]?.text]
  return value < 1 && ((of === 'of' && article === 'a') || (of === 'di' && article === 'un'))
}

/** `12-oz`, `twelve-ounce`: written as one word. */
function isHyphened({ tokens }: TypedText, next: number): boolean {
  const [before, sign, behind] = [tokens[next - 1], tokens[next], tokens[next + 1]]
  return sign?.text === '-' && behind?.kind === 'word' && before?.to === sign.from && sign.to === behind.from
}

/** The unit behind a number; of two that begin there the longer one. */
function unitBehind(typed: TypedText, said: NumberSaid) {
  const more = isPartOf(typed, said) ? 2 : isHyphened(typed, said.next) ? 1 : 0
  const number = { ...said, next: said.next + more }
  const found = KINDS.map((kind) => unitAt(typed, number.next, [kind]))
    .filter((each) => each !== null)
    .filter(({ unit }) => !isCalledBottle(unit.key))
    .reduce<ReturnType<typeof unitAt>>((best, each) => (best === null || each.next > best.next ? each : best), null)
  if (found === null) return null
  const isShort = number.isWord && NEEDS_FIGURES.has(textFrom(typed, number.next, found.next).toLowerCase())
  return isShort && found.unit.kind !== 'volume' && found.unit.kind !== 'mass' ? null : { ...found, from: number.next }
}

/** `A full kilo`, `a whole litre`: one of it. */
function fullOneAt(typed: TypedText, at: number): NumberSaid | null {
  const isOne = /^(?:a|an|one|un|uno)$/.test(wordAt(typed, at))
  if (!isOne || !/^(?:full|whole|good|solid|intero|buon)$/.test(wordAt(typed, at + 1))) return null
  const isUnit = /^(?:kilos?|kg|litre|liter|pint|quart|pound|cup|chilo|litro)$/.test(wordAt(typed, at + 2))
  return isUnit ? { value: 1, text: '1', next: at + 2, isWord: true } : null
}

/**
 * The amount with its unit that begins at a piece of a sentence: `1.5 l`, `a litre and a half`, `half a kilo`, `82 %`, `1 lb 4 oz`,
 * `250 g per litre`; null where none does. Never throws.
 */
export function measureSaid(typed: TypedText, at: number, things: ReadonlySet<string>): MeasureSaid | null {
  const number = fullOneAt(typed, at) ?? numberSaid(typed, at, things)
  if (number === null || ABOUT.has(wordAt(typed, number.next))) return null
  const found = unitBehind(typed, number)
  if (found === null) return null
  const { unit } = found
  const more = moreAt(typed, found.next)
  // `300 g e mezzo litro`: half a litre is another amount.
  const isOther = more !== null && /^(?:volume|mass)$/.test(anyUnitAt(typed, more.next)?.unit.kind ?? '')
  const isMore = more !== null && !isOther && (unit.kind === 'volume' || unit.kind === 'mass' || unit.kind === 'span')
  const count = isMore ? roundly(number.value + more.share) : number.value
  const whole: MeasureSaid = {
    kind: unit.kind,
    value: toCanonical(unit, count),
    unit,
    numberText: isMore ? String(count) : number.text,
    unitText: mendedFrom(typed, found.from, found.next),
    next: isMore ? more.next : found.next,
  }
  if (unit.kind !== 'volume' && unit.kind !== 'mass') return whole
  const sum = withSmaller(typed, whole, things)
  return shortOf(typed, sum, things) ?? lessBehind(typed, sum, things) ?? sum
}

/** Taken from the greater, in the unit of the smaller: `3.5 cup`. */
function lessened(greater: MeasureSaid, smaller: MeasureSaid, next: number): MeasureSaid | null {
  if (greater.kind !== smaller.kind || smaller.value >= greater.value) return null
  const value = greater.value - smaller.value
  const { unit, unitText } = smaller
  return { ...smaller, value, numberText: String(roundly(value / unit.factor)), unitText, next }
}

/** `a quart less half a cup`, `un litro meno 50 ml`. */
function lessBehind(typed: TypedText, whole: MeasureSaid, things: ReadonlySet<string>): MeasureSaid | null {
  if (!/^(?:less|minus|meno)$/.test(wordAt(typed, whole.next))) return null
  const less = measureSaid(typed, whole.next + 1, things)
  return less === null ? null : lessened(whole, less, less.next)
}

/** `half a cup short of a quart`. */
function shortOf(typed: TypedText, less: MeasureSaid, things: ReadonlySet<string>): MeasureSaid | null {
  if (!/^(?:short|shy|under)$/.test(wordAt(typed, less.next))) return null
  const from = wordAt(typed, less.next + 1) === 'of' ? less.next + 2 : less.next + 1
  const whole = measureSaid(typed, from, things)
  return whole === null ? null : lessened(whole, less, whole.next)
}

/** `1 kilo 200`: grams of the next. */
const isOfKilo = ({ unit, value }: MeasureSaid, grams: number): boolean =>
  unit.key === 'kg' && Number.isInteger(value / 1000) && grams >= 100 && grams <= 950 && grams % 50 === 0

/** What goes on in smaller ones: pounds, pints, cups. `500 ml 50 cl` are two. */
const isMetric = ({ unit }: MeasureSaid): boolean => /^(?:ml|cl|dl|l|cc|g|kg|hg|mg)$/.test(unit.key)

/** Where the number of the smaller unit stands: `1 lb 4 oz`, `one pound four ounces`, `two pounds and three ounces`. */
function smallerFrom(typed: TypedText, whole: MeasureSaid): number | null {
  const { tokens } = typed
  if (tokens[whole.next]?.kind === 'number') return whole.next
  if (isMetric(whole)) return null
  const from = /^(?:and|&)$/.test(wordAt(typed, whole.next)) ? whole.next + 1 : whole.next
  // `A pint and a cup` are two.
  return /^(?:a|an|un|una)$/.test(wordAt(typed, from)) ? null : from
}

/** `1 lb 4 oz`: a smaller unit of the same kind belongs to it. */
function withSmaller(typed: TypedText, whole: MeasureSaid, things: ReadonlySet<string>): MeasureSaid {
  const from = smallerFrom(typed, whole)
  const number = from === null ? null : numberSaid(typed, from, things)
  const found = number === null ? null : unitAt(typed, number.next, [whole.kind])
  if (number !== null && anyUnitAt(typed, number.next) === null && isOfKilo(whole, number.value)) {
    const value = whole.value + number.value
    return { ...whole, value, numberText: String(value / 1000), next: number.next }
  }
  if (number === null || found === null || found.unit.factor >= whole.unit.factor) return whole
  if (isMetric(whole)) return whole
  return {
    ...whole,
    value: whole.value + toCanonical(found.unit, number.value),
    unitText: `${whole.unitText} ${number.text} ${textFrom(typed, number.next, found.next)}`,
    next: found.next,
  }
}
