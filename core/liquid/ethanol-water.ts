import { DomainError } from '../domain-error.ts'
import { ofLate } from '../once.ts'
import { A, B, C } from './r22-coefficients.ts'
import { findRoot } from './root.ts'

export const R22_LOW_C = -20
export const R22_HIGH_C = 40

/** The coefficients by powers of dt = t − 20, then of p. */
const ORDERED = [
  ...A,
  ...([B[0], ...C[0]] as const),
  ...([B[1], ...C[1]] as const),
  ...([B[2], ...C[2]] as const),
  ...([B[3], ...C[3]] as const),
  ...([B[4], ...C[4]] as const),
  B[5],
] as const
/** In a typed array, whose fixed places the engine reads directly: with the loops written out, twice as fast. */
const COEFFICIENTS = Float64Array.from(ORDERED) as unknown as typeof ORDERED

/** Horner in p: what stands without dt, with dt, and with dt² and higher powers. */
const atDt0 = (k: typeof ORDERED, p: number): number =>
  ((((((((((k[11] * p + k[10]) * p + k[9]) * p + k[8]) * p + k[7]) * p + k[6]) * p + k[5]) * p + k[4]) * p + k[3]) * p +
    k[2]) *
    p +
    k[1]) *
    p +
  k[0]
const atDt1 = (k: typeof ORDERED, p: number): number =>
  ((((((((((k[23] * p + k[22]) * p + k[21]) * p + k[20]) * p + k[19]) * p + k[18]) * p + k[17]) * p + k[16]) * p +
    k[15]) *
    p +
    k[14]) *
    p +
    k[13]) *
    p +
  k[12]
const fromDt2 = (k: typeof ORDERED, p: number, dt: number): number =>
  (((k[53] * dt + ((k[52] * p + k[51]) * p + k[50])) * dt +
    ((((k[49] * p + k[48]) * p + k[47]) * p + k[46]) * p + k[45])) *
    dt +
    (((((((((k[44] * p + k[43]) * p + k[42]) * p + k[41]) * p + k[40]) * p + k[39]) * p + k[38]) * p + k[37]) * p +
      k[36]) *
      p +
      k[35])) *
    dt +
  ((((((((((k[34] * p + k[33]) * p + k[32]) * p + k[31]) * p + k[30]) * p + k[29]) * p + k[28]) * p + k[27]) * p +
    k[26]) *
    p +
    k[25]) *
    p +
    k[24])

const refuse = (massFraction: number, tempC: number): never => {
  if (!(massFraction >= 0 && massFraction <= 1)) {
    throw new DomainError('bad_value', 'mass_fraction_out_of_range', { massFraction })
  }
  throw new DomainError('bad_value', 'temperature_out_of_range', { tempC, lowC: R22_LOW_C, highC: R22_HIGH_C })
}

/**
 * Density of a mixture of ethanol and water at atmospheric pressure, in kg/m³ (numerically g/L).
 * @param massFraction - ethanol by mass, p, 0 to 1; outside, throws `mass_fraction_out_of_range`.
 * @param tempC - temperature t, °C, −20 to 40; outside, throws `temperature_out_of_range`. Below the freezing
 *   point the value is that of the liquid, as the formula gives it. Falls with p at every temperature of the range.
 * ρ = A1 + Σ A_k p^(k−1) + Σ B_k (t − 20)^k + Σ Σ C_ik p^k (t − 20)^i
 * Error: the formula is the definition of the legal tables; printed measurements (NBS 1913) differ by ≤ 0.12 kg/m³.
 * Source: OIML R 22 (1975) = Council Directive 76/766/EEC, Annex, section 4, OJ L 262, 27.9.1976, p. 149–152.
 */
export const ethanolWaterDensityKgPerM3 = (massFraction: number, tempC: number): number => {
  if (!(massFraction >= 0 && massFraction <= 1 && tempC >= R22_LOW_C && tempC <= R22_HIGH_C))
    refuse(massFraction, tempC)
  const dt = tempC - 20
  const k = COEFFICIENTS
  return (fromDt2(k, massFraction, dt) * dt + atDt1(k, massFraction)) * dt + atDt0(k, massFraction)
}

/** 0.789 239 12 g/mL by the formula itself: % vol closes at 100 only with this value. */
export const ETHANOL_DENSITY_20C_G_PER_ML = ethanolWaterDensityKgPerM3(1, 20) / 1000

/** Rounding in the last digits must not refuse pure alcohol. */
export const checkedAbv = (abvPercent: number): number => {
  if (!(abvPercent >= 0 && abvPercent <= 100 + 1e-9)) {
    throw new DomainError('bad_value', 'strength_out_of_range', { abvPercent, lowPercent: 0, highPercent: 100 })
  }
  return Math.min(abvPercent, 100)
}

/** Strength where ethanol and mixture are both measured at `scaleC`: 20 °C by law here, 60 °F in US tables. */
export const abvFromMassFraction = (massFraction: number, scaleC = 20): number =>
  (100 * massFraction * ethanolWaterDensityKgPerM3(massFraction, scaleC)) / ethanolWaterDensityKgPerM3(1, scaleC)

/**
 * Ethanol by mass, 0 to 1, of an unsweetened spirit; the inverse of `abvFromMassFraction` to 1e-15.
 * @param abvPercent - % vol at `scaleC`, 0 to 100; outside, throws `strength_out_of_range`.
 */
export const massFractionFromAbv = (abvPercent: number, scaleC = 20): number => {
  const ethanolKgPerM3 = (checkedAbv(abvPercent) / 100) * ethanolWaterDensityKgPerM3(1, scaleC)
  const excess = (p: number) => p * ethanolWaterDensityKgPerM3(p, scaleC) - ethanolKgPerM3
  return findRoot({ f: excess, low: 0, high: 1, tolerance: 1e-15 })
}

/** The same at 20 °C, kept: while one amount of a mixture is moved, the strengths of the others stay as they were. */
export const massFractionAt20 = ofLate((abvPercent) => massFractionFromAbv(abvPercent))

/**
 * Ethanol by mass, 0 to 1, of an unsweetened spirit of this density at this temperature. There is one answer at most,
 * because density falls with p over the whole range; a density beyond water or ethanol throws `density_out_of_range`.
 */
export const massFractionFromDensity = (densityKgPerM3: number, tempC: number): number => {
  const lowKgPerM3 = ethanolWaterDensityKgPerM3(1, tempC)
  const highKgPerM3 = ethanolWaterDensityKgPerM3(0, tempC)
  if (!(densityKgPerM3 >= lowKgPerM3 && densityKgPerM3 <= highKgPerM3)) {
    throw new DomainError('bad_value', 'density_out_of_range', { densityKgPerM3, lowKgPerM3, highKgPerM3, tempC })
  }
  const excess = (p: number) => ethanolWaterDensityKgPerM3(p, tempC) - densityKgPerM3
  return findRoot({ f: excess, low: 0, high: 1, tolerance: 1e-15 })
}

/** % vol at 20 °C of an unsweetened spirit of this density at this temperature. */
export const abvFromDensity = (densityKgPerM3: number, tempC: number): number =>
  abvFromMassFraction(massFractionFromDensity(densityKgPerM3, tempC))
