import { DomainError } from '../../domain-error.ts'
import {
  abvFromMassFraction,
  ethanolWaterDensityKgPerM3,
  massFractionFromAbv,
  massFractionFromDensity,
} from '../ethanol-water.ts'
import { GLASS_EXPANSION_PER_K } from './glass.ts'

export interface HydrometerReading {
  /** % vol as the stem shows it. */
  readonly readingPercent: number
  readonly tempC: number
  /** The temperature the stem is right at; its % vol count volumes at the same one. */
  readonly scaleC: number
}

/** A stem may show this much below 0 in cold water, or above 100: the scale goes on in a straight line. */
const BEYOND_SCALE_PERCENT = 2
/** A result this far outside 0 to 100 is taken as the end: the reading's own error. */
const BEYOND_END_PERCENT = 0.5

const scaleDensityKgPerM3 = (percent: number, scaleC: number): number =>
  ethanolWaterDensityKgPerM3(massFractionFromAbv(percent, scaleC), scaleC)

/** What a stem in % vol stands for at its own temperature, kg/m³; beyond its ends the scale goes on in a straight line. */
export const stemDensityKgPerM3 = (percent: number, scaleC: number): number => {
  if (percent >= 0 && percent <= 100) return scaleDensityKgPerM3(percent, scaleC)
  const [end, inside] = percent < 0 ? [0, 0.1] : [100, 99.9]
  const atEnd = scaleDensityKgPerM3(end, scaleC)
  return atEnd + ((scaleDensityKgPerM3(inside, scaleC) - atEnd) * (percent - end)) / (inside - end)
}

/**
 * True strength, % vol at `scaleC`, of an unsweetened spirit from what a glass alcoholometer shows at another temperature.
 * ρ(true, t) = ρ(reading, t0) (1 − 25·10⁻⁶ (t − t0)): a warm stem is larger and floats in a lighter liquid.
 * @param reading - % vol −2 to 102; °C −20 to 40; what no mixture of ethanol and water shows throws `reading_out_of_scale`.
 * Error: 0.05 % vol beside the reading's own. Sugar ruins it: 10 g/L read as 2 to 3.5 % vol too little.
 * Source: OIML R 22, tables VIII and IX (20 °C); 27 CFR 30, table 1 (60 °F); compared with both kinds of table in the tests.
 */
export const strengthPercentFromReading = ({ readingPercent, tempC, scaleC }: HydrometerReading): number => {
  const refuse = () => new DomainError('bad_value', 'reading_out_of_scale', { readingPercent, tempC })
  if (!(readingPercent >= -BEYOND_SCALE_PERCENT && readingPercent <= 100 + BEYOND_SCALE_PERCENT)) throw refuse()
  const waterKgPerM3 = ethanolWaterDensityKgPerM3(0, tempC)
  const ethanolKgPerM3 = ethanolWaterDensityKgPerM3(1, tempC)
  const densityKgPerM3 = stemDensityKgPerM3(readingPercent, scaleC) * (1 - GLASS_EXPANSION_PER_K * (tempC - scaleC))
  const slackKgPerM3 = (percent: number, inside: number): number =>
    (BEYOND_END_PERCENT / 0.1) * Math.abs(scaleDensityKgPerM3(percent, scaleC) - scaleDensityKgPerM3(inside, scaleC))
  if (densityKgPerM3 > waterKgPerM3) {
    if (densityKgPerM3 > waterKgPerM3 + slackKgPerM3(0, 0.1)) throw refuse()
    return 0
  }
  if (densityKgPerM3 < ethanolKgPerM3) {
    if (densityKgPerM3 < ethanolKgPerM3 - slackKgPerM3(100, 99.9)) throw refuse()
    return 100
  }
  return abvFromMassFraction(massFractionFromDensity(densityKgPerM3, tempC), scaleC)
}

/** The same for an alcoholometer made for 20 °C: % vol at 20 °C. */
export const abvPercentAt20 = (readingPercent: number, tempC: number): number =>
  strengthPercentFromReading({ readingPercent, tempC, scaleC: 20 })
