import { FINISHED_PER_SPIRIT } from '../../botanical/limits/per-finished.ts'
import { type Liquid, mix, volumeMl, water } from '../../liquid/liquid.ts'
import { USUAL_MATERIAL } from '../../quantity/materials.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../portion.ts'
import { valuesOnce } from '../propagate.ts'
import { dilute } from '../solve/dilute.ts'
import { inputsOf, type Steeping, steepLiquids } from '../steep.ts'
import { fillerOf, gramOf } from '../sweetening.ts'
import { allFinishedMl } from '../targets.ts'
import { weighedOut } from '../tool-precision.ts'
import type { PlannedPlant, PlanWish } from './plan-wish.ts'
import { plantOf } from './plant-of.ts'
import { chooseTargets, type SyrupGrams } from './reach-targets.ts'
import { plantUnknown } from './unknown-plant.ts'

export interface DosedPlant extends PlannedPlant {
  readonly massG: Measured
  /** True where the typical dose was lowered to what its ceiling allows. */
  readonly capped: boolean
}

export interface PlannedJar {
  readonly steeping: Steeping
  readonly plants: readonly DosedPlant[]
}

/** A gram of what it is sweetened with, and of what goes in for the water. */
export const gramsWished = ({ sweetener, filler }: Pick<PlanWish, 'sweetener' | 'filler'>): SyrupGrams => ({
  gram: gramOf(sweetener ?? USUAL_MATERIAL),
  filler: fillerOf(filler ?? null),
})

/** A little under a ceiling, so that no rounding goes over it. */
const UNDER_CEILING = 0.98
const MOST_ROUNDS = 6
/** The least share of a usual dose that a plan chooses. */
const LEAST_LEFT = 0.1

/** What the strained infusion is expected to be, unchecked. */
export const infusionIn = ({ steeping }: PlannedJar): Liquid => steepLiquids(valuesOnce(inputsOf(steeping))).infusion

/** What goes into the jar: spirit brought to the strength wished for, and each plant as said or at its typical dose. */
export function jarOf(wish: PlanWish, spirits: readonly Portion[]): PlannedJar {
  const waterG = wish.steepAtPercent === null ? exactly(0) : dilute(spirits, wish.steepAtPercent).waterG
  const pouredMl = volumeMl(mix(...valuesOnce(spirits).map(liquidOf), water(waterG.value)))
  const typicalG = wish.plants.map(({ botanical }) => (botanical.dose.typicalGPerL * pouredMl) / 1000)
  let mostG: readonly number[] = wish.plants.map(() => Number.POSITIVE_INFINITY)
  let jar = filled(wish, spirits, waterG, typicalG, mostG)
  for (let round = 0; round < MOST_ROUNDS && wish.plants.some(isCapped); round++) {
    const { jar: liquid, infusion } = steepLiquids(valuesOnce(inputsOf(jar.steeping)))
    const allMl = allFinishedMl(liquid, chooseTargets(infusion, wish.named, gramsWished(wish)))
    mostG = mostOfEach(wish, typicalG, Math.min(pouredMl, FINISHED_PER_SPIRIT * allMl))
    jar = filled(wish, spirits, waterG, typicalG, mostG)
  }
  return jar
}

/** Only a dose of our own choice is brought under its ceiling; what a maker asked for is refused instead. */
const isCapped = ({ massG, botanical }: PlannedPlant): boolean => massG === null && botanical.ceiling !== null

/**
 * What plants of our own dose may weigh, g: in proportion to what is usual, so much as those that were weighed leave of the
 * limit of their hazard.
 */
function mostOfEach({ plants }: PlanWish, typicalG: readonly number[], volumeMl: number): readonly number[] {
  const limited = plants.map(({ botanical, massG }, index) => {
    const limit = botanical.ceiling ?? botanical.warnAbove
    const mostG = ((limit?.gPerLSpirit ?? Number.POSITIVE_INFINITY) * volumeMl) / 1000
    return { key: limit?.key, isSaid: massG !== null, share: (massG?.value ?? typicalG[index]!) / mostG }
  })
  return plants.map((plant, index) => {
    if (!isCapped(plant)) return Number.POSITIVE_INFINITY
    const sharers = limited.filter(({ key }) => key === plant.botanical.ceiling?.key)
    const shareOf = (isSaid: boolean): number =>
      sharers.reduce((sum, each) => sum + (each.isSaid === isSaid ? each.share : 0), 0)
    const left = (UNDER_CEILING - shareOf(true)) / shareOf(false)
    // So little of it is no recipe: the plan is refused with what the plants together may be.
    return left < LEAST_LEFT ? Number.POSITIVE_INFINITY : left * typicalG[index]!
  })
}

function filled(
  wish: PlanWish,
  spirits: readonly Portion[],
  waterG: Measured,
  typicalG: readonly number[],
  mostG: readonly number[],
): PlannedJar {
  const plants = wish.plants.map((plant, index) => {
    const capped = plant.massG === null && mostG[index]! < typicalG[index]!
    const massG = plant.massG ?? weighedOut(Math.min(typicalG[index]!, mostG[index]!))
    return { ...plant, massG, capped }
  })
  const steeping = {
    spirits,
    waterG,
    sweetenings: wish.sweetenings,
    plants: [...plants.map(({ botanical, massG }) => plantOf(botanical, massG)), ...wish.unknown.map(plantUnknown)],
  }
  return { steeping, plants }
}
