import { DomainError } from '../../domain-error.ts'
import { ethanolWaterDensityKgPerM3, massFractionFromDensity } from '../ethanol-water.ts'
import { abvPercent, densityGPerMl, type Liquid, liquidFrom, sugar, sugarGPerL } from '../liquid.ts'
import { findRoot } from '../root.ts'
import { apparentVolumeMlPerG } from '../sucrose-water.ts'
import { brixByRefraction } from './refraction.ts'

/** A density and where it was seen, kg/m³ and °C. */
export interface DensityAt {
  readonly densityKgPerM3: number
  readonly tempC: number
}

export interface GaugedLiquid {
  /** % vol at 20 °C. */
  readonly abvPercent: number
  readonly sugarGPerL: number
}

/** More sugar than any liqueur holds, by mass, and ethanol of its spirit: where a search ends. */
const MOST_SUGAR_FRACTION = 0.7
const MOST_ETHANOL_FRACTION = 0.95

/** Below water or beyond alcohol by so much counts as the end itself, kg/m³: the stem's own error. */
const SLACK_KG_PER_M3 = 1.5
/** A refractometer that shows so much less than the hydrometer's sugar is read as no alcohol, Brix. */
const SLACK_BRIX = 0.5

const misfit = (reading: 'density' | 'brix' | 'boiled'): DomainError =>
  new DomainError('bad_value', 'readings_do_not_fit', { reading })

const gram = (ethanolOfSolvent: number, sugarFraction: number): Liquid => ({
  ...sugar(sugarFraction),
  ethanolG: ethanolOfSolvent * (1 - sugarFraction),
  waterG: (1 - ethanolOfSolvent) * (1 - sugarFraction),
})

const kgPerM3 = (liquid: Liquid, tempC: number): number => 1000 * densityGPerMl(liquid, tempC)

/**
 * Strength, % vol, of a liquid whose sugar is known, from its density: the strength at which our own model of the three
 * together has it. @param sugarGPerL - 0 to 800. Throws `readings_do_not_fit` where no strength has that density.
 * Error: that of the sugar, 0.1 to 0.35 % vol for each g/L, of the density, 0.7 % vol for 0.001 at 30 % vol, and of the model.
 * Source: inverse of `volumeMl`; compared with the boil-off examples and 27 CFR 30.32 in the tests.
 */
export function abvOfKnownSugar({ densityKgPerM3, tempC }: DensityAt, sugarGPerL: number): number {
  const roomShare = 1 - (sugarGPerL * apparentVolumeMlPerG(sugarGPerL)) / 1000
  const excess = (percent: number) =>
    kgPerM3(liquidFrom({ volumeMl: 1000, abvPercent: percent, sugarGPerL }), tempC) - densityKgPerM3
  const highPercent = 100 * roomShare
  if (excess(0) <= 0) {
    if (excess(0) < -SLACK_KG_PER_M3) throw misfit('density')
    return 0
  }
  if (excess(highPercent) >= 0) {
    if (excess(highPercent) > SLACK_KG_PER_M3) throw misfit('density')
    return highPercent
  }
  return findRoot({ f: excess, low: 0, high: highPercent, tolerance: 1e-12 })
}

/** The liquid of this density whose solvent is so strong. */
function ofDensity({ densityKgPerM3, tempC }: DensityAt, ethanolOfSolvent: number): Liquid {
  const excess = (sugarFraction: number) => kgPerM3(gram(ethanolOfSolvent, sugarFraction), tempC) - densityKgPerM3
  if (excess(0) >= 0) return gram(ethanolOfSolvent, 0)
  if (excess(MOST_SUGAR_FRACTION) <= 0) throw misfit('density')
  return gram(ethanolOfSolvent, findRoot({ f: excess, low: 0, high: MOST_SUGAR_FRACTION, tolerance: 1e-13 }))
}

/**
 * Sugar, g/L, of a liqueur that was boiled until no alcohol was left and filled up with water to its first volume, from the
 * density of that. Throws `readings_do_not_fit` where it is lighter than water.
 * Error: 2.6 g/L for 0.001 of gravity. Source: ICUMSA SPS-4 (extract as sucrose of the same gravity, OIV-MA-AS2-03B).
 */
export function sugarOfBoiledGPerL(at: DensityAt): number {
  const lighterKgPerM3 = ethanolWaterDensityKgPerM3(0, at.tempC) - at.densityKgPerM3
  if (lighterKgPerM3 > SLACK_KG_PER_M3) throw misfit('boiled')
  return sugarGPerL(ofDensity(at, 0))
}

/**
 * Strength and sugar from what a refractometer, made for sugar water at 20 °C, and a hydrometer show in the same liquid:
 * alcohol raises the one and lowers the other.
 * Throws `readings_do_not_fit` where no mixture shows both.
 * Error: 0.4 % vol for 0.2 Brix or 0.001 of gravity; never tested on measured mixtures, so ±2 % vol and ±1 Brix are to be
 * said, what a regression on real drinks reached (thesis abstract, mountainscholar.org 986220de).
 * Source: our density and `brixByRefraction`, solved together; the rule that the sugar is near the mean of both Brix
 * (Poberezhets, Uman Nat. Univ. Hort. 86 (2014) 122–128) comes out of it, see the tests.
 */
export function gaugeByTwoInstruments(brix: number, brixTempC: number, at: DensityAt): GaugedLiquid {
  const waterKgPerM3 = ethanolWaterDensityKgPerM3(0, at.tempC)
  const [low, high] = [
    at.densityKgPerM3 >= waterKgPerM3 ? 0 : massFractionFromDensity(atLeastSpirit(at), at.tempC),
    MOST_ETHANOL_FRACTION,
  ]
  const excess = (ethanolOfSolvent: number) => brixByRefraction(ofDensity(at, ethanolOfSolvent), brixTempC) - brix
  const atLow = excess(low)
  if (atLow >= 0) {
    if (atLow > SLACK_BRIX) throw misfit('brix')
    return asGauged(ofDensity(at, low))
  }
  if (excess(high) <= 0) throw misfit('brix')
  return asGauged(ofDensity(at, findRoot({ f: excess, low, high, tolerance: 1e-12 })))
}

const asGauged = (liquid: Liquid): GaugedLiquid => ({ abvPercent: abvPercent(liquid), sugarGPerL: sugarGPerL(liquid) })

function atLeastSpirit({ densityKgPerM3, tempC }: DensityAt): number {
  const spiritKgPerM3 = ethanolWaterDensityKgPerM3(MOST_ETHANOL_FRACTION, tempC)
  if (densityKgPerM3 < spiritKgPerM3) throw misfit('density')
  return densityKgPerM3
}
