import type { StemScale } from '../../quantity/quantities.ts'
import { ethanolWaterDensityKgPerM3 } from '../ethanol-water.ts'
import { US_PROOF_TEMP_C } from '../proof.ts'
import { findRoot } from '../root.ts'
import { sucroseWaterDensityKgPerM3 } from '../sucrose-water.ts'
import { GLASS_EXPANSION_PER_K } from './glass.ts'
import { stemDensityKgPerM3 } from './hydrometer.ts'

export interface StemReading {
  readonly value: number
  readonly scale: StemScale
  /** Of the liquid it floats in, °C. */
  readonly tempC: number
}

/** The sugar trade's degrees, 145 − 145/SG; older European stems count 144.3, which is 0.0005 of gravity at 10 degrees. */
const BAUME_MODULUS = 145

const scaleC = (scale: StemScale): number => (scale === 'sg_60f' ? US_PROOF_TEMP_C : 20)

/** At the temperature the stem is made for. */
function printedKgPerM3({ value, scale }: StemReading): number {
  const waterKgPerM3 = ethanolWaterDensityKgPerM3(0, scaleC(scale))
  switch (scale) {
    case 'sg':
    case 'sg_60f':
      return value * waterKgPerM3
    case 'g_per_ml':
      return value * 1000
    case 'brix':
      return sucroseWaterDensityKgPerM3(value / 100, 20)
    case 'baume':
      return (waterKgPerM3 * BAUME_MODULUS) / (BAUME_MODULUS - value)
    case 'percent':
      return stemDensityKgPerM3(value, 20)
  }
}

/**
 * Density of the liquid at its own temperature, kg/m³, from what a glass hydrometer shows in it.
 * @param reading - SG and g/mL 0.7 to 1.6, Brix 0 to 85, Baumé 0 to 50, % vol −2 to 102; °C −20 to 40.
 * Error: the reading's own, `stemPlusMinus`.
 * Source: ρ = ρ(stem) (1 − 25·10⁻⁶ (t − t0)), OIML R 22, tables VIII and IX; Brix by ICUMSA SPS-4, compared with the specific
 * gravities of Zoecklein et al. in the tests; Baumé by the National Bureau of Standards, from memory.
 */
export const densityFromStemKgPerM3 = (reading: StemReading): number =>
  printedKgPerM3(reading) * (1 - GLASS_EXPANSION_PER_K * (reading.tempC - scaleC(reading.scale)))

/** The densest sugar water that a stem is read in, kg/m³ at 20 °C: 85 Brix. */
const MOST_BRIX = 85

/**
 * What a hydrometer shows in a liquid of this density at 20 °C, in its own unit: the inverse of `densityFromStemKgPerM3`. A stem in
 * % vol shows nothing in what is heavier than water: there it gives 0.
 * @param densityKgPerM3 - 700 to 1450
 */
export function stemReading(densityKgPerM3: number, scale: StemScale): number {
  const printed = (value: number): number => printedKgPerM3({ value, scale, tempC: 20 })
  switch (scale) {
    case 'sg':
    case 'sg_60f':
    case 'g_per_ml':
      return densityKgPerM3 / printed(1) / (1 - GLASS_EXPANSION_PER_K * (20 - scaleC(scale)))
    case 'baume':
      return BAUME_MODULUS * (1 - printed(0) / densityKgPerM3)
    case 'brix':
    case 'percent': {
      const excess = (value: number) => printed(value) - densityKgPerM3
      const [low, high] = [0, scale === 'brix' ? MOST_BRIX : 100]
      if (excess(low) * excess(high) >= 0) return Math.abs(excess(low)) < Math.abs(excess(high)) ? low : high
      return findRoot({ f: excess, low, high, tolerance: 1e-12 })
    }
  }
}
