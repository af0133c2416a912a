import { DomainError } from '../domain-error.ts'
import { type Keeping, keepingOf, weaknessOf } from '../liquid/keeping.ts'
import {
  abvPercent,
  extract,
  type Liquid,
  massG,
  mix,
  part,
  sugar,
  sugarG,
  sugarGPerL,
  volumeMl,
  water,
} from '../liquid/liquid.ts'
import type { Measured } from '../quantity/measured/measured.ts'
import { liquidOf, type NamedPortion } from './portion.ts'
import { propagate, type Values, valuesOf } from './propagate.ts'
import { type KnownSweetening, knownSweetenings, sweetLiquid } from './sweetening.ts'

/** What a plant does to the liquid around it; shares are by mass, of the plant as weighed in. */
export interface Plant {
  readonly massG: Measured
  readonly waterShare: Measured
  readonly sugarShare: Measured
  /** What dissolves of it beside its sugar, all of which joins the liquid. */
  readonly extractShare: Measured
  /** How much of its water and sugar joins the liquid, 0 to 1. */
  readonly exchangeShare: Measured
  /** Mixed liquid left in the drained, lightly pressed plant, per gram as weighed in. */
  readonly keptMlPerG: Measured
  /** Leaves and flowers, which take more room than they weigh. */
  readonly bulky: boolean
}

/** What goes into the jar. */
export interface Steeping {
  readonly spirits: readonly NamedPortion[]
  /** Water that dilutes the spirit first. */
  readonly waterG: Measured
  /** What goes in with the plants. */
  readonly sweetenings: readonly KnownSweetening[]
  readonly plants: readonly Plant[]
}

export interface Steep {
  /** Spirit and the water that dilutes it, before the plants. */
  readonly pouredMl: number
  /** While steeping. */
  readonly jarLiquidMl: Measured
  readonly jarAbvPercent: Measured
  readonly jarSugarGPerL: Measured
  /** What the plants' own water adds. */
  readonly plantWaterG: Measured
  readonly plantSugarG: Measured
  /** What stays in the drained plants. */
  readonly keptBackMl: Measured
  /** What filters and sediment take. */
  readonly filterMl: Measured
  readonly infusionMl: Measured
  readonly infusionAbvPercent: Measured
  readonly infusionSugarG: Measured
  /** The usual jar that holds it all. */
  readonly jarMl: number
  /** The strained infusion, as the inputs' own values make it. */
  readonly infusion: Liquid
  /** The liquid in the jar, likewise. */
  readonly jar: Liquid
  /** Of the liquid in the jar. */
  readonly keeping: Keeping
}

/** Share of the drained liquid that filters and sediment take: 1 to 2 %. Estimated; nobody has published it. */
export const FILTER_SHARE: Measured = { value: 0.015, plusMinus: 0.005 }

/** A share of the liquid beyond which the plants hold it all, for all that is known of how much they keep. */
const MOST_KEPT_SHARE = 0.7
/** The share that is asked for instead. */
const ENOUGH_KEPT_SHARE = 0.35

/** Everything that a steep is reckoned from, filters included. */
export interface Inputs extends Steeping {
  readonly filterShare: Measured
}

export const inputsOf = (steeping: Steeping): Inputs => ({
  ...steeping,
  sweetenings: knownSweetenings(steeping.sweetenings),
  filterShare: FILTER_SHARE,
})

/**
 * The liquids of a steep, as plain amounts; nothing is checked. The plants' water and sugar join by their exchange, their
 * extract as it is, the drained plants keep millilitres of the mixture, filters a share of what drains.
 * Source: reference/botanicals.json, `dilution_rule` (derived); the exchange and what is kept are estimates.
 */
export function steepLiquids({ spirits, waterG, sweetenings, plants, filterShare }: Values<Inputs>) {
  const sum = (of: (plant: Values<Plant>) => number) => plants.reduce((total, plant) => total + of(plant), 0)
  const plantWaterG = sum((plant) => plant.massG * plant.waterShare * plant.exchangeShare)
  const plantSugarG = sum((plant) => plant.massG * plant.sugarShare * plant.exchangeShare)
  const plantExtractG = sum((plant) => plant.massG * plant.extractShare)
  const poured = mix(...spirits.map(liquidOf), water(waterG))
  const ofPlants = mix(water(plantWaterG), sugar(plantSugarG), extract(plantExtractG))
  const jar = mix(poured, sweetLiquid(sweetenings), ofPlants)
  const jarLiquidMl = volumeMl(jar)
  const keptBackMl = sum((plant) => plant.massG * plant.keptMlPerG)
  const drainedMl = Math.max(0, jarLiquidMl - keptBackMl)
  const filterMl = drainedMl * filterShare
  const infusion = part(jar, jarLiquidMl === 0 ? 0 : (drainedMl - filterMl) / jarLiquidMl)
  return { poured, jar, infusion, plantWaterG, plantSugarG, plantExtractG, jarLiquidMl, keptBackMl, filterMl }
}

/** What comes of spirit and plants in a jar; refuses what would ferment in it and what the plants would drink up. */
export function steep(steeping: Steeping): Steep {
  const steeped = steepUnjudged(steeping)
  if (steeped.keeping !== 'ferments') return steeped
  throw new DomainError('unreachable', 'steep_too_weak', {
    ...weaknessOf({ abvPercent: steeped.jarAbvPercent, sugarGPerL: steeped.jarSugarGPerL }),
    instead: null,
  })
}

/** The same of what has been steeped already: refuses only what the plants drink up. */
export function steepUnjudged(steeping: Steeping): Steep {
  const { plants } = steeping
  const inputs = inputsOf(steeping)
  const { poured, jar, infusion, keptBackMl, jarLiquidMl } = steepLiquids(valuesOf(inputs))
  if (keptBackMl > MOST_KEPT_SHARE * jarLiquidMl) {
    throw new DomainError('unreachable', 'plants_drink_all', {
      plantsG: plants.reduce((sum, plant) => sum + plant.massG.value, 0),
      liquidMl: volumeMl(poured),
      enoughMl: (volumeMl(poured) * keptBackMl) / (jarLiquidMl * ENOUGH_KEPT_SHARE),
    })
  }
  const found = propagate(inputs, (values) => {
    const made = steepLiquids(values)
    return {
      jarLiquidMl: made.jarLiquidMl,
      jarAbvPercent: abvPercent(made.jar),
      jarSugarGPerL: sugarGPerL(made.jar),
      plantWaterG: made.plantWaterG,
      plantSugarG: made.plantSugarG,
      keptBackMl: made.keptBackMl,
      filterMl: made.filterMl,
      infusionMl: volumeMl(made.infusion),
      infusionAbvPercent: abvPercent(made.infusion),
      infusionSugarG:
        (sugarG(sweetLiquid(values.sweetenings)) + made.plantSugarG) * (massG(made.infusion) / massG(made.jar)),
    }
  })
  return {
    ...found,
    pouredMl: volumeMl(poured),
    jarMl: jarMlFor(volumeMl(mix(poured, sweetLiquid(valuesOf(steeping.sweetenings)))), plants),
    infusion,
    jar,
    keeping: keepingOf({ abvPercent: found.jarAbvPercent, sugarGPerL: found.jarSugarGPerL }),
  }
}

/** Jars that are sold, ml. */
const USUAL_JARS_ML = [
  250, 500, 750, 1000, 1500, 2000, 3000, 4000, 5000, 10_000, 15_000, 20_000, 25_000, 34_000, 54_000,
]

/** At most 90 % full: room to shake, and little air, which browns fruit. Common practice, no source. */
const FULL_SHARE = 0.9
/** Plants settle: what is over by less still goes in. */
const SETTLED_SHARE = 0.01

/** Room a gram of plant takes, ml: about its weight; leaves and flowers more, even pressed under. Estimated. */
const ROOM_ML_PER_G = 1
const BULKY_ROOM_ML_PER_G = 3

/** The room that liquid and plants take together, mL; estimated. */
export const roomMlOf = (liquidMl: number, plants: readonly Pick<Plant, 'massG' | 'bulky'>[]): number =>
  plants.reduce((sum, { massG, bulky }) => sum + massG.value * (bulky ? BULKY_ROOM_ML_PER_G : ROOM_ML_PER_G), liquidMl)

/** The smallest usual jar that takes liquid and plants; from 54 l up, whole tens of litres over several vessels. */
export function jarMlFor(liquidMl: number, plants: readonly Pick<Plant, 'massG' | 'bulky'>[]): number {
  const neededMl = (roomMlOf(liquidMl, plants) * (1 - SETTLED_SHARE)) / FULL_SHARE
  return USUAL_JARS_ML.find((jarMl) => jarMl >= neededMl) ?? Math.ceil(neededMl / 10_000) * 10_000
}
