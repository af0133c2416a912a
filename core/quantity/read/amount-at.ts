import type { Mass, Volume } from '../quantities.ts'
import { compoundAt, type Measure, measureAt } from './measure-at.ts'
import { readNumber } from './read-number.ts'
import type { TypedText } from './tokens.ts'
import { anyUnitAt, unitAt } from './unit-at.ts'

const massOf = ({ value, halfDigit, stated, unit, assumed }: Measure): Mass => ({
  kind: 'mass',
  massG: value,
  halfDigitG: halfDigit,
  statedG: stated,
  byVolume: false,
  unit: unit.key,
  assumed,
})

const volumeOf = ({ value, halfDigit, stated, unit, assumed }: Measure, atC: number | null): Volume => ({
  kind: 'volume',
  volumeMl: value,
  halfDigitMl: halfDigit,
  statedMl: stated,
  atC,
  unit: unit.key,
  assumed,
})

const AT_WORDS = ['at', 'a', '@']

/** True for `at 40%` at piece `at`; `at 40°` may be a temperature as well. */
export const isAtStrength = (typed: TypedText, at: number): boolean => {
  const number = AT_WORDS.includes(typed.tokens[at]?.text ?? '') ? readNumber(typed, at + 1) : null
  if (number === null || unitAt(typed, number.next, ['temperature']) !== null) return false
  const unit = anyUnitAt(typed, number.next)?.unit
  return unit?.kind === 'strength' && unit.key !== 'degrees'
}

/** `at 28 C` at piece `at`, in °C; null where nothing of the kind stands there. */
export const atTemperature = (typed: TypedText, at: number): { atC: number | null; next: number } => {
  const [word, after] = [typed.tokens[at]?.text ?? '', typed.tokens[at + 1]]
  const isThere = AT_WORDS.includes(word) && (after?.kind === 'number' || after?.text === '-')
  if (!isThere || isAtStrength(typed, at)) return { atC: null, next: at }
  const { value, next } = measureAt({ ...typed, wanted: 'temperature' }, at + 1, ['temperature'])
  return { atC: value, next }
}

const withTemperature = (typed: TypedText, measure: Measure): { amount: Volume; next: number } => {
  const { atC, next } = atTemperature(typed, measure.next)
  return { amount: volumeOf(measure, atC), next }
}

/** A volume, with its temperature, at piece `at`. */
export const volumeAt = (typed: TypedText, at: number): { amount: Volume; next: number } =>
  withTemperature(typed, compoundAt(typed, at, ['volume']))

/** A mass at piece `at`. */
export const massAt = (typed: TypedText, at: number): { amount: Mass; next: number } => {
  const measure = compoundAt(typed, at, ['mass'])
  return { amount: massOf(measure), next: measure.next }
}

/** A volume or a mass at piece `at`; bare ounces are asked back. */
export const amountAt = (typed: TypedText, at: number): { amount: Volume | Mass; next: number } => {
  const measure = compoundAt(typed, at, ['volume', 'mass'])
  return measure.unit.kind === 'mass'
    ? { amount: massOf(measure), next: measure.next }
    : withTemperature(typed, measure)
}
