import { DomainError } from '../domain-error.ts'
import { ofLate } from '../once.ts'

const LOW_C = 0
const HIGH_C = 80

/** W[i][k] of w^(k+1) ((t − 20)/100)^i, kg/m³. One transcription has −3.9646 in the first row: < 0.0003 kg/m³. */
const W = [
  [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
  [-46.272, -7.172, 1.1597, 5.1126, 17.5254],
  [59.7712, 7.2491, 12.363, -35.4791],
  [-47.2207, -21.6977, 27.6301],
  [18.3184, 12.3081],
] as const

const horner = (coefficients: readonly number[], x: number): number => {
  let sum = 0
  for (let k = coefficients.length - 1; k >= 0; k--) sum = sum * x + coefficients[k]!
  return sum
}

/** Density of water, kg/m³, in Kell's form, as the ICUMSA formula carries it. */
const WATER = [999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12] as const
const waterDensity = (t: number): number => horner(WATER, t) / (1 + 16.887236e-3 * t)

/** What dissolved sugar adds to the density of water, divided by w: finite at w = 0. */
const sugarSlope = (w: number, t: number): number => {
  const x = (t - 20) / 100
  let sum = 0
  for (let i = W.length - 1; i >= 0; i--) sum = sum * x + horner(W[i]!, w)
  return sum
}

const density = (w: number, t: number): number => waterDensity(t) + w * sugarSlope(w, t)

const checkTemperature = (tempC: number): void => {
  if (!(tempC >= LOW_C && tempC <= HIGH_C)) {
    throw new DomainError('bad_value', 'temperature_out_of_range', { tempC, lowC: LOW_C, highC: HIGH_C })
  }
}

/**
 * Density of sucrose in water at atmospheric pressure, in kg/m³.
 * @param massFraction - sucrose by mass, w. Measured to about 0.7; used to 1, where it gives 1552 kg/m³ (sugar glass).
 *   Outside 0 to 1, throws `mass_fraction_out_of_range`.
 * @param tempC - temperature t, °C, 0 to 80; outside, throws `temperature_out_of_range`.
 * Error: printed tables differ by ≤ 0.1 kg/m³ to w = 0.4, 0.2 at 0.6, 0.5 at 0.8.
 * Source: ICUMSA SPS-4 (1990/1998; Emmerich, PTB): ρ = ρ_water(t) + Σ x^i Σ W_ik w^(k+1), x = (t − 20)/100.
 */
export const sucroseWaterDensityKgPerM3 = (massFraction: number, tempC: number): number => {
  if (!(massFraction >= 0 && massFraction <= 1)) {
    throw new DomainError('bad_value', 'mass_fraction_out_of_range', { massFraction })
  }
  checkTemperature(tempC)
  return density(massFraction, tempC)
}

/** The sweetness of sugar itself, without a solvent, by the formula: nothing can be sweeter. */
const PURE_SUGAR_G_PER_L = density(1, 20)

/** w ρ(w) at 20 °C as a polynomial in w: the sugar in a litre of a syrup. Only the first row of W counts there. */
const SWEETNESS_20 = [0, waterDensity(20), ...W[0]]
/** w (ρ(w) − slope(w)) in the same length, of which the equation of `sweetnessGPerL` is made. */
const ROOM_20 = SWEETNESS_20.map((coefficient, power) => coefficient - (power > 0 ? (W[0][power - 1] ?? 0) : 0))

const MAX_STEPS = 50
/** So little sugar that a double has no digits left for it. */
const LEAST_FRACTION = 1e-30

/**
 * The w from 0 to 1 at which a polynomial that is convex and rises there has a value, by Newton's method: five steps or so,
 * where a bracket takes forty. Steps end where they go back and forth in the last bits.
 */
const newton = (polynomial: readonly number[], wanted: number, from: number): number => {
  let w = from
  for (let step = 1; step <= MAX_STEPS; step++) {
    let [value, rise] = [0, 0]
    for (let power = polynomial.length - 1; power >= 0; power--) {
      rise = rise * w + value
      value = value * w + polynomial[power]!
    }
    const next = w - (value - wanted) / rise
    if (Math.abs(next - w) <= 3e-15 * next + LEAST_FRACTION) return Math.min(1, next)
    w = next
  }
  throw new DomainError('internal', 'no_convergence', { low: 0, high: 1 })
}

/** Mass fraction w of a syrup that holds this much sugar in a litre at 20 °C. */
const massFractionAt20 = (sugarGPerL: number): number =>
  newton(SWEETNESS_20, sugarGPerL, Math.min(1, sugarGPerL / 1200))

/** Room of dissolved sugar in a first guess. */
const ROUGH_ML_PER_G = 0.62

/**
 * Sugar in a litre at 20 °C, g/L, 0 to 1552, of a solvent that holds sugar: c = 1000 sugar / (solvent + sugar v(c)). With the
 * mass fraction w of the syrup that is as sweet, c = w ρ(w) and v(c) by `apparentVolumeMlPerG`, that is one polynomial in w.
 * @param solventMl - volume at 20 °C of what the sugar is dissolved in, 0 or more
 * @param sugarG - more than 0
 */
export const sweetnessGPerL = (solventMl: number, sugarG: number): number => {
  const sugarMl = (1000 * sugarG) / waterDensity(20)
  const equation = SWEETNESS_20.map((sweetness, power) => solventMl * sweetness + sugarMl * ROOM_20[power]!)
  const guessGPerL = (1000 * sugarG) / (solventMl + ROUGH_ML_PER_G * sugarG)
  const w = newton(equation, 1000 * sugarG, Math.min(1, guessGPerL / 1200))
  return Math.min(PURE_SUGAR_G_PER_L, horner(SWEETNESS_20, w))
}

/**
 * Apparent specific volume of dissolved sucrose, mL/g: the room that a gram takes in water.
 * @param sugarGPerL - sugar in a litre of the finished solution at 20 °C, 0 to 1552; at 0 the limit of infinite dilution.
 * @param tempC - °C, 0 to 80; the solution stays the same by mass.
 * Error: ≤ 0.0003 mL/g to 800 g/L (from the density's).
 * Source: v = (1/ρ − (1 − w)/ρ_water)/w, rearranged so that nothing cancels; ρ by ICUMSA SPS-4.
 */
export const apparentVolumeMlPerG = (sugarGPerL: number, tempC = 20): number => {
  if (!(sugarGPerL >= 0 && sugarGPerL <= PURE_SUGAR_G_PER_L * (1 + 1e-12))) {
    throw new DomainError('bad_value', 'sweetness_out_of_range', { sugarGPerL, highGPerL: PURE_SUGAR_G_PER_L })
  }
  checkTemperature(tempC)
  const w = massFractionAt20(Math.min(sugarGPerL, PURE_SUGAR_G_PER_L))
  return ((1 - sugarSlope(w, tempC) / density(w, tempC)) / waterDensity(tempC)) * 1000
}

/** The same at 20 °C, kept: while one amount of a mixture is moved, the sweetness of the others stays as it was. */
export const roomMlPerGAt20 = ofLate((sugarGPerL) => apparentVolumeMlPerG(sugarGPerL))
