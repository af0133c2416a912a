import { ethanolG, type Liquid, mix, volumeMl, water } from '../../liquid/liquid.ts'
import { exactly, type Measured } from '../../quantity/measured.ts'
import { weighedOut } from '../by-tool.ts'
import { dilute } from '../dilute.ts'
import { liquidOf, type Portion } from '../portion.ts'
import { valuesOf } from '../propagate.ts'
import { inputsOf, type Steeping, steepLiquids } from '../steep.ts'
import { liquidHolding } from '../targets.ts'
import type { PlannedPlant, PlanWish } from './plan.ts'
import { plantOf } from './plant-of.ts'
import { chooseTargets } from './reach-targets.ts'
import { plantUnknown } from './unknown-plant.ts'

export interface DosedPlant extends PlannedPlant {
  readonly massG: Measured
  /** True where the typical dose was lowered to what its ceiling allows. */
  readonly capped: boolean
}

export interface Jar {
  readonly steeping: Steeping
  readonly plants: readonly DosedPlant[]
}

/** A litre of the finished drink may hold half of what a litre of the steeping spirit may. */
const FINISHED_PER_SPIRIT = 0.5
/** A little under a ceiling, so that no rounding goes over it. */
const UNDER_CEILING = 0.98
const MOST_ROUNDS = 6

/** What the strained infusion is expected to be, unchecked. */
export const infusionIn = ({ steeping }: Jar): Liquid => steepLiquids(valuesOf(inputsOf(steeping))).infusion

/** What goes into the jar: spirit brought to the strength wished for, and each plant as said or at its typical dose. */
export function jarOf(wish: PlanWish, spirits: readonly Portion[]): Jar {
  const waterG = wish.steepAtPercent === null ? exactly(0) : dilute(spirits, wish.steepAtPercent).waterG
  const pouredMl = volumeMl(mix(...valuesOf(spirits).map(liquidOf), water(waterG.value)))
  const typicalG = wish.plants.map(({ botanical }) => (botanical.dose.typicalGPerL * pouredMl) / 1000)
  let mostG = wish.plants.map(() => Number.POSITIVE_INFINITY)
  let jar = filled(wish, spirits, waterG, typicalG, mostG)
  for (let round = 0; round < MOST_ROUNDS && wish.plants.some(isCapped); round++) {
    const infusion = infusionIn(jar)
    const finishedMl = volumeMl(liquidHolding(ethanolG(infusion), chooseTargets(infusion, wish.named)))
    mostG = wish.plants.map((plant) => ceilingG(plant, wish, Math.min(pouredMl, FINISHED_PER_SPIRIT * finishedMl)))
    jar = filled(wish, spirits, waterG, typicalG, mostG)
  }
  return jar
}

/** Only a dose of our own choice is brought under its ceiling; what a maker asked for is refused instead. */
const isCapped = ({ massG, botanical }: PlannedPlant): boolean => massG === null && botanical.ceiling !== null

function ceilingG({ botanical: { ceiling } }: PlannedPlant, { plants }: PlanWish, volumeMl: number): number {
  if (ceiling === null) return Number.POSITIVE_INFINITY
  // Plants with the same hazard share its limit.
  const sharers = plants.filter(({ botanical }) => botanical.ceiling?.key === ceiling.key).length
  return (UNDER_CEILING * ceiling.gPerLSpirit * volumeMl) / 1000 / sharers
}

function filled(
  wish: PlanWish,
  spirits: readonly Portion[],
  waterG: Measured,
  typicalG: readonly number[],
  mostG: readonly number[],
): Jar {
  const plants = wish.plants.map((plant, index) => {
    const capped = plant.massG === null && mostG[index]! < typicalG[index]!
    const massG = plant.massG ?? weighedOut(Math.min(typicalG[index]!, mostG[index]!))
    return { ...plant, massG, capped }
  })
  const steeping = {
    spirits,
    waterG,
    sugarG: wish.sugarG,
    plants: [...plants.map(({ botanical, massG }) => plantOf(botanical, massG)), ...wish.unknown.map(plantUnknown)],
  }
  return { steeping, plants }
}
