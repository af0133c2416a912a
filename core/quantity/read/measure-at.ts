import { DomainError } from '../../domain-error.ts'
import type { UnitKind } from '../problems.ts'
import type { Assumption } from '../quantities.ts'
import { type AcceptedRange, accepted, isWithin } from './accepted-ranges.ts'
import { type NumberRead, type Reading, readNumber } from './read-number.ts'
import { expectEnd, shown, type TypedText, textFrom, wordAt } from './tokens.ts'
import { anyUnitAt, expectUnit, unitAt } from './unit-at.ts'
import { toCanonical, type Unit } from './units.ts'

/** A number and its unit as typed, before one of its readings is chosen. */
export interface Head {
  readonly isNegative: boolean
  readonly number: NumberRead
  readonly stated: NumberRead | null
  readonly unit: Unit
  readonly unitText: string
  readonly next: number
}

/** A reading in the canonical unit of its kind: ml, g, % vol, g/L, °C, days. */
export interface Measure {
  readonly unit: Unit
  readonly value: number
  /** Half of the last digit typed, within `HALF_DIGIT_CAP`; a fraction counts as its cap. */
  readonly halfDigit: number
  readonly stated: number | null
  readonly assumed: readonly Assumption[]
  readonly next: number
}

/**
 * The most that half a digit can be, as a share of the value. A whole number or a fraction of a large unit (`1 l`, `2 cups`)
 * is not meant to half of it but as its vessel is: 2 %. Anything else: 5 %.
 */
const HALF_DIGIT_CAP = { ofLargeUnit: 0.02, other: 0.05 } as const
/** ml or g from which a unit is large. */
const LARGE_UNIT = 100

const halfDigitOf = (unit: Unit, { halfDigit }: Reading, value: number): number => {
  const isLarge = halfDigit >= 0.5 && unit.factor >= LARGE_UNIT
  const cap = isLarge ? HALF_DIGIT_CAP.ofLargeUnit : HALF_DIGIT_CAP.other
  return Math.min(halfDigit * unit.factor, cap * Math.abs(value))
}

const rangeOf: { readonly [Kind in UnitKind]: AcceptedRange } = {
  volume: accepted.volumeMl,
  mass: accepted.massG,
  strength: accepted.strengthPercent,
  sweetness: accepted.sweetnessGPerL,
  temperature: accepted.temperatureC,
  span: accepted.spanDays,
}

export const unique = (assumed: readonly Assumption[]): readonly Assumption[] => [...new Set(assumed)]

/** The one reading that lies in the range. Throws `out_of_range`, or `two_readings` where both do. */
export const chooseReading = (
  typed: TypedText,
  readings: readonly Reading[],
  isFit: (value: number) => boolean,
  toText: (number: string) => string,
): Reading => {
  const [first, second] = readings.filter(({ value }) => isFit(value))
  if (first !== undefined && second !== undefined) {
    const choices = [toText(first.text), toText(second.text)] as const
    throw new DomainError('ambiguous', 'two_readings', { typed: shown(typed.text), choices })
  }
  if (first === undefined) {
    throw new DomainError('bad_value', 'out_of_range', { typed: shown(typed.text), wanted: typed.wanted })
  }
  return first
}

/** The number at piece `at`. Throws `negative_number` or `no_number`. */
export const expectNumber = (typed: TypedText, at: number): NumberRead => {
  const number = readNumber(typed, at)
  if (number !== null) return number
  const values = { typed: shown(typed.text), wanted: typed.wanted }
  const isNegative = typed.tokens[at]?.text === '-' && readNumber(typed, at + 1) !== null
  throw new DomainError('bad_value', isNegative ? 'negative_number' : 'no_number', values)
}

const statedAt = (typed: TypedText, at: number): NumberRead | null =>
  typed.tokens[at]?.text === '±' ? expectNumber(typed, at + 1) : null

/** Number, `±` and unit at piece `at`; `bare` is the unit taken where none was typed, null where one must be. */
export const headAt = (typed: TypedText, at: number, kinds: readonly UnitKind[], bare: Unit | null): Head => {
  // Neither a temperature nor a span of time is computed with its own error.
  const takesStated = !kinds.includes('temperature') && !kinds.includes('span')
  const isNegative = kinds.includes('temperature') && typed.tokens[at]?.text === '-'
  const number = expectNumber(typed, isNegative ? at + 1 : at)
  const before = takesStated ? statedAt(typed, number.next) : null
  const from = before?.next ?? number.next
  if (!takesStated && typed.tokens[from]?.text === '±') expectEnd(typed, from)
  const found = expectUnit(typed, from, kinds)
  const unit = found?.unit ?? bare
  if (unit === null) {
    throw new DomainError('bad_value', 'no_unit', { typed: shown(typed.text), wanted: typed.wanted })
  }
  const next = found?.next ?? from
  const unitText = textFrom(typed, from, next)
  const after = takesStated && before === null ? statedAt(typed, next) : null
  if (after === null) return { isNegative, number, stated: before, unit, unitText, next }
  const again = unitAt(typed, after.next, [unit.kind])
  const isSame = again?.unit.key === unit.key
  return { isNegative, number, stated: after, unit, unitText, next: isSame && again ? again.next : after.next }
}

const statedIn = (typed: TypedText, { stated, unit }: Head, value: number): number | null => {
  if (stated === null) return null
  const isFit = (number: number) => number * unit.factor <= Math.abs(value)
  if (!stated.readings.some((each) => isFit(each.value))) {
    throw new DomainError('bad_value', 'wide_plus_minus', { typed: shown(typed.text) })
  }
  return chooseReading(typed, stated.readings, isFit, (text) => `± ${text}`).value * unit.factor
}

/** Of a liquid that is more than one quantity, which of them is out of range. */
const inPart = (typed: TypedText, { kind }: Unit): TypedText =>
  typed.wanted === 'part' ? { ...typed, wanted: kind } : typed

/** The reading of a head that lies in the accepted range of its kind; throws as `chooseReading`. */
export const measureOf = (typed: TypedText, head: Head): Measure => {
  const { isNegative, number, unit, unitText, next } = head
  const sign = isNegative ? -1 : 1
  const canonical = (value: number) => toCanonical(unit, sign * value)
  const reading = chooseReading(
    inPart(typed, unit),
    number.readings,
    (each) => isWithin(rangeOf[unit.kind], canonical(each)),
    (text) => `${isNegative ? '-' : ''}${text} ${unitText}`.trim(),
  )
  const { value, assumed } = reading
  return {
    unit,
    value: canonical(value),
    halfDigit: halfDigitOf(unit, reading, canonical(value)),
    stated: statedIn(typed, head, canonical(value)),
    assumed: assumed === null ? unit.assumed : [...unit.assumed, assumed],
    next,
  }
}

export const measureAt = (typed: TypedText, at: number, kinds: readonly UnitKind[], bare: Unit | null = null) =>
  measureOf(typed, headAt(typed, at, kinds, bare))

const JOINS: ReadonlySet<string> = new Set(['+', 'and', 'plus', 'e'])

/** `1 lb 4 oz`, `1 cup + 2 tbsp`: a smaller unit of the same kind after the first is added to it. */
export const compoundAt = (typed: TypedText, at: number, kinds: readonly UnitKind[]): Measure => {
  let sum = measureAt(typed, at, kinds)
  let factor = sum.unit.factor
  while (sum.stated === null) {
    const from = JOINS.has(wordAt(typed, sum.next)) ? sum.next + 1 : sum.next
    const number = readNumber(typed, from)
    const unit = number && anyUnitAt(typed, number.next)?.unit
    if (!unit || unit.kind !== sum.unit.kind || unit.factor >= factor) break
    const part = measureAt(typed, from, [unit.kind])
    sum = { ...part, unit: sum.unit, value: sum.value + part.value, assumed: unique([...sum.assumed, ...part.assumed]) }
    factor = unit.factor
  }
  if (!isWithin(rangeOf[sum.unit.kind], sum.value)) {
    const { wanted } = inPart(typed, sum.unit)
    throw new DomainError('bad_value', 'out_of_range', { typed: shown(typed.text), wanted })
  }
  return sum
}
