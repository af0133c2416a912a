import { DomainError } from '../../domain-error.ts'
import { abvFromMassFraction } from '../../liquid/ethanol-water.ts'
import { abvPercentFromUsProof } from '../../liquid/proof.ts'
import type { Strength } from '../quantities.ts'
import { atTemperature } from './amount-at.ts'
import { type Head, headAt, measureOf, unique } from './measure-at.ts'
import { shown, type TypedText } from './tokens.ts'
import type { Unit } from './units.ts'

/** What a strength without a unit is taken as. */
const barePercent: Unit = { key: 'percent', kind: 'strength', factor: 1, zero: 0, assumed: ['percent_vol'] }

/** `0.95`, `0.4 vol`: below 1 and no percent sign; a fraction of one, or a very weak liquid? */
const refuseFraction = (typed: TypedText, { number, unit, unitText }: Head): void => {
  const [reading] = number.readings
  const isPlain = unit.key === 'proof' || (unit.key === 'percent' && unitText !== '')
  if (isPlain || reading === undefined || reading.value >= 1 || reading.value < 0.001) return
  const percent = Number((100 * reading.value).toPrecision(12))
  const choices = [`${reading.text}%`, `${percent}%`] as const
  throw new DomainError('ambiguous', 'fraction_or_percent', { typed: shown(typed.text), choices })
}

/** `70° proof` on an old bottle is 35 % vol in the United States and 40 in Britain: which one? */
const refuseDegreesProof = (typed: TypedText, { number, unit }: Head): void => {
  if (unit.key !== 'degrees_proof') return
  const text = number.readings[0]?.text ?? ''
  const choices = [`${text} US proof`, `${text} UK proof`] as const
  const value = number.readings[0]?.value ?? 0
  const percents = [value / 2, (value * 4) / 7] as const
  throw new DomainError('ambiguous', 'us_or_uk_proof', { typed: shown(typed.text), choices, percents })
}

/** % vol at 20 °C of a strength in its own unit, which counts as % vol or % by mass. */
function abvPercentOf(unit: string, value: number): number {
  if (unit === 'proof') return abvPercentFromUsProof(Math.min(2 * value, 200))
  return unit === 'mass_percent' ? abvFromMassFraction(Math.min(value, 100) / 100) : value
}

/** The strength of a head that was read as one, with the temperature after it. */
export const strengthOf = (typed: TypedText, head: Head): { strength: Strength; next: number } => {
  refuseFraction(typed, head)
  refuseDegreesProof(typed, head)
  const { value, halfDigit, stated, unit, assumed, next: end } = measureOf(typed, head)
  const { atC, next } = atTemperature(typed, end)
  const strength: Strength = {
    kind: 'strength',
    abvPercent: abvPercentOf(unit.key, value),
    halfDigitPercent: halfDigit,
    statedPercent: stated,
    atC,
    unit: unit.key,
    assumed: unique(assumed),
  }
  return { strength, next }
}

/** A strength at piece `at`; a bare number is % vol. */
export const strengthAt = (typed: TypedText, at: number): { strength: Strength; next: number } =>
  strengthOf(typed, headAt(typed, at, ['strength'], barePercent))
