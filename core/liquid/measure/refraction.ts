import { ethanolWaterDensityKgPerM3 } from '../ethanol-water.ts'
import { densityGPerMl, ethanolG, extractG, type Liquid, massG, sugarFreeMassFraction, sugarG } from '../liquid.ts'
import { findRoot } from '../root.ts'
import { sucroseWaterDensityKgPerM3 } from '../sucrose-water.ts'

/** Refractive index of water at 20 °C, sodium light. Source: CRC Handbook, 102nd ed., aqueous solutions. */
const WATER_INDEX_20C = 1.33299

/** (n² − 1)/(n² + 2), which is a sum of what each part brings. */
const refractionOf = (index: number): number => (index * index - 1) / (index * index + 2)
const indexOf = (refraction: number): number => Math.sqrt((1 + 2 * refraction) / (1 - refraction))

/** mL/g. The two others fall and rise a little with what is dissolved. */
const WATER_ML_PER_G = (1000 * refractionOf(WATER_INDEX_20C)) / ethanolWaterDensityKgPerM3(0, 20)
const sucroseMlPerG = (withoutEthanol: number): number => 0.20675 - 0.0021 * withoutEthanol
const ethanolMlPerG = (withoutSugar: number): number => 0.277 + 0.0033 * withoutSugar

/** The strongest sugar water that a Brix is looked for in, by mass. */
const MOST_SUCROSE_FRACTION = 0.85

const sugarWaterIndex = (massFraction: number): number =>
  indexOf(
    ((WATER_ML_PER_G * (1 - massFraction) + sucroseMlPerG(massFraction) * massFraction) *
      sucroseWaterDensityKgPerM3(massFraction, 20)) /
      1000,
  )

/**
 * Refractive index of ethanol, water and what is dissolved, sodium light; all that is dissolved counts as sucrose.
 * @param tempC - °C, 0 to 40 with sugar, −20 to 40 without; outside, throws `temperature_out_of_range`.
 * Error: 0.0002 against the CRC tables of sucrose to 48 % and of ethanol from 24 to 40 % by mass at 20 °C. The three together
 * were not compared with measured mixtures. Away from 20 °C it follows the density, which is 0.02 Brix a kelvin off in water.
 * Source: additive specific refraction (Lorentz and Lorenz), fitted to the CRC Handbook, 102nd ed.; density as in `volumeMl`.
 */
export function refractiveIndex(liquid: Liquid, tempC = 20): number {
  const totalG = massG(liquid)
  if (totalG === 0) return WATER_INDEX_20C
  const [ethanol, sugar] = [ethanolG(liquid) / totalG, (sugarG(liquid) + extractG(liquid)) / totalG]
  const withoutEthanol = ethanol === 1 ? 0 : sugar / (1 - ethanol)
  const mlPerG =
    WATER_ML_PER_G * (1 - ethanol - sugar) +
    ethanolMlPerG(sugarFreeMassFraction(liquid)) * ethanol +
    sucroseMlPerG(withoutEthanol) * sugar
  return indexOf(mlPerG * densityGPerMl(liquid, tempC))
}

/** What a refractometer made for sugar water at 20 °C shows in a liquid, Brix: 0 for less than water, 85 at most. */
export function brixByRefraction(liquid: Liquid, tempC = 20): number {
  const index = refractiveIndex(liquid, tempC)
  const excess = (massFraction: number) => sugarWaterIndex(massFraction) - index
  if (excess(0) >= 0) return 0
  if (excess(MOST_SUCROSE_FRACTION) <= 0) return 100 * MOST_SUCROSE_FRACTION
  return 100 * findRoot({ f: excess, low: 0, high: MOST_SUCROSE_FRACTION, tolerance: 1e-13 })
}
