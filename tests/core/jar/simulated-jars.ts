import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import {
  abvFromDensity,
  ETHANOL_DENSITY_20C_G_PER_ML,
  ethanolWaterDensityKgPerM3,
  massFractionFromAbv,
} from '../../../core/liquid/ethanol-water.ts'

/** What a kind of jar really gives, from and to. */
export interface PlantTruth {
  readonly id: string
  readonly massG: number
  readonly percent: number
  /** What dissolves beside its counted sugars, as a share of it, drawn evenly. From memory; nobody has published it for cold spirit. */
  readonly extract: readonly [number, number]
}

/** Roasted coffee gives cold water 15 to 24 % (from memory), spirit perhaps less; roselle half of itself, fruit its acids. */
export const PLANTS: readonly PlantTruth[] = [
  { id: 'coffee_cracked', massG: 200, percent: 60, extract: [0.1, 0.22] },
  { id: 'juniper', massG: 30, percent: 45, extract: [0.2, 0.45] },
  { id: 'hibiscus', massG: 30, percent: 40, extract: [0.3, 0.6] },
  { id: 'raspberry', massG: 700, percent: 60, extract: [0.005, 0.03] },
  { id: 'green_walnut', massG: 800, percent: 95, extract: [0.02, 0.08] },
]

/** A liquid as it really is, reckoned here by masses, with 0.62 ml for a gram of what is dissolved (27 CFR 24.181: 0.618). */
export interface TrueLiquid {
  readonly ethanolG: number
  readonly waterG: number
  readonly solidsG: number
  readonly sugarG: number
}

const SOLIDS_ML_PER_G = 0.62

export function trueVolumeMl({ ethanolG, waterG, solidsG }: TrueLiquid): number {
  const solventG = ethanolG + waterG
  return (1000 * solventG) / ethanolWaterDensityKgPerM3(ethanolG / solventG, 20) + SOLIDS_ML_PER_G * solidsG
}

export const trueAbvPercent = (liquid: TrueLiquid): number =>
  (100 * liquid.ethanolG) / ETHANOL_DENSITY_20C_G_PER_ML / trueVolumeMl(liquid)

/** What a right alcoholometer shows: the strength of a spirit as dense. */
export const apparentPercent = (liquid: TrueLiquid): number =>
  abvFromDensity((1000 * (liquid.ethanolG + liquid.waterG + liquid.solidsG)) / trueVolumeMl(liquid), 20)

export const withMore = (liquid: TrueLiquid, waterG: number, sugarG: number): TrueLiquid => ({
  ethanolG: liquid.ethanolG,
  waterG: liquid.waterG + waterG,
  solidsG: liquid.solidsG + sugarG,
  sugarG: liquid.sugarG + sugarG,
})

/** How far one kitchen's tools and goods lie from what they say. */
export interface Kitchen {
  /** Its jug, as a share of what it reads; the same whatever it measures. */
  readonly jug: number
  readonly labelPercent: number
  readonly hydrometerPercent: number
  /** From 0 to 1 over each range. */
  readonly water: number
  readonly sugar: number
  readonly exchange: number
  readonly kept: number
  readonly extract: number
  readonly filter: number
}

const within = ([low, high]: readonly [number, number], share: number): number => low + (high - low) * share

/** The infusion that comes of a litre by that jug, as it really is. */
export function trueInfusion({ id, massG, percent, extract }: PlantTruth, kitchen: Kitchen): TrueLiquid {
  const { waterFraction, sugarsFraction, waterExchange, retainedMlPerG } = botanicalById(id)
  const exchange = within([waterExchange.min, waterExchange.max], kitchen.exchange)
  const sugars = (sugarsFraction?.value ?? 0) * within([0.7, 1.3], kitchen.sugar)
  const label = percent + kitchen.labelPercent
  const spiritMl = 1000 * (1 + kitchen.jug)
  const share = massFractionFromAbv(label)
  const spiritG = (spiritMl * ethanolWaterDensityKgPerM3(share, 20)) / 1000
  const sugarG = massG * sugars * exchange
  const jar: TrueLiquid = {
    ethanolG: spiritG * share,
    waterG: spiritG * (1 - share) + massG * waterFraction.value * within([0.98, 1.02], kitchen.water) * exchange,
    solidsG: sugarG + massG * within(extract, kitchen.extract),
    sugarG,
  }
  const keptMl = massG * within([retainedMlPerG.min, retainedMlPerG.max], kitchen.kept)
  const jarMl = trueVolumeMl(jar)
  const left = ((jarMl - keptMl) / jarMl) * (1 - within([0.01, 0.02], kitchen.filter))
  return {
    ethanolG: jar.ethanolG * left,
    waterG: jar.waterG * left,
    solidsG: jar.solidsG * left,
    sugarG: jar.sugarG * left,
  }
}
