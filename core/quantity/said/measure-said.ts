import type { UnitKind } from '../problems.ts'
import { mendedFrom, type TypedText, textFrom, wordAt } from '../read/tokens.ts'
import { anyUnitAt, unitAt } from '../read/unit-at.ts'
import { toCanonical, type Unit } from '../read/units.ts'
import { halfMoreAt, type NumberSaid, numberSaid } from './number-said.ts'

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

/** The unit behind a number; of two that begin there the longer one. */
function unitBehind(typed: TypedText, said: NumberSaid) {
  const number = isPartOf(typed, said) ? { ...said, next: said.next + 2 } : said
  const found = KINDS.map((kind) => unitAt(typed, number.next, [kind]))
    .filter((each) => each !== null)
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
  const half = halfMoreAt(typed, found.next)
  const isHalfMore = half !== null && (unit.kind === 'volume' || unit.kind === 'mass' || unit.kind === 'span')
  const count = isHalfMore ? number.value + 0.5 : number.value
  const whole: MeasureSaid = {
    kind: unit.kind,
    value: toCanonical(unit, count),
    unit,
    numberText: isHalfMore ? String(count) : number.text,
    unitText: mendedFrom(typed, found.from, found.next),
    next: isHalfMore ? half : found.next,
  }
  return unit.kind === 'volume' || unit.kind === 'mass' ? withSmaller(typed, whole, things) : whole
}

/** `1 kilo 200`: grams of the next. */
const isOfKilo = ({ unit, value }: MeasureSaid, grams: number): boolean =>
  unit.key === 'kg' && Number.isInteger(value / 1000) && grams >= 100 && grams <= 950 && grams % 50 === 0

/** `1 lb 4 oz`: a smaller unit of the same kind belongs to it. */
function withSmaller(typed: TypedText, whole: MeasureSaid, things: ReadonlySet<string>): MeasureSaid {
  const number = typed.tokens[whole.next]?.kind === 'number' ? numberSaid(typed, whole.next, things) : null
  const found = number === null ? null : unitAt(typed, number.next, [whole.kind])
  if (number !== null && anyUnitAt(typed, number.next) === null && isOfKilo(whole, number.value)) {
    const value = whole.value + number.value
    return { ...whole, value, numberText: String(value / 1000), next: number.next }
  }
  if (number === null || found === null || found.unit.factor >= whole.unit.factor) return whole
  // `500 ml 50 cl` are two; pounds and cups go on in smaller ones.
  if (/^(?:ml|cl|dl|l|cc|g|kg|hg|mg)$/.test(whole.unit.key)) return whole
  return {
    ...whole,
    value: whole.value + toCanonical(found.unit, number.value),
    unitText: `${whole.unitText} ${number.text} ${textFrom(typed, number.next, found.next)}`,
    next: found.next,
  }
}
