import type { Botanical } from '../../botanical/botanical.ts'
import type { Plan } from './plan.ts'

type PlannedPlant = Plan['plants'][number]
type Batch = Pick<Plan, 'plants' | 'unknown' | 'ceilings' | 'steep'>

/** Three times the usual maximum, or a third of the minimum, is probably a typing slip. Common practice, no source. */
const FAR_TIMES = 3

/** Amounts within a twentieth of the usual ones, and strengths within 1 % vol, are usual still. Common practice, no source. */
const USUAL_SHARE = 0.05
export const USUAL_PERCENT = 1

/** From this much sugar of the plants' own on, g, it is worth a word. Common practice, no source. */
export const NOTED_SUGAR_G = 5

/** Grams of a plant in a litre of what was poured on it. */
export const doseGPerL = ({ massG }: Pick<PlannedPlant, 'massG'>, { steep }: Pick<Plan, 'steep'>): number =>
  massG.value / (steep.pouredMl / 1000)

/** A pinch of one plant among several is nothing unusual, nor is a dose that was chosen by its ceiling. */
const mayBeLittle = ({ capped }: PlannedPlant, { plants, unknown }: Batch): boolean =>
  capped || plants.length + unknown.length > 1

const isWarned = ({ botanical: { id } }: PlannedPlant, { ceilings }: Batch): boolean =>
  ceilings.warned.some((each) => each.id === id)

/** Whether an amount is so far from what is usual that it may have been typed wrong. */
export const isFarOff = (plant: PlannedPlant, batch: Batch): boolean => {
  const { dose } = plant.botanical
  const gPerL = doseGPerL(plant, batch)
  if (gPerL > FAR_TIMES * dose.maxGPerL) return !isWarned(plant, batch)
  return gPerL < dose.minGPerL / FAR_TIMES && !mayBeLittle(plant, batch)
}

/** How an amount that is not far off, nor warned of, stands to what is usual. */
export function amountBesideUsual(plant: PlannedPlant, batch: Batch): 'more' | 'less' | 'usual' {
  const { dose } = plant.botanical
  const gPerL = doseGPerL(plant, batch)
  if (isFarOff(plant, batch)) return 'usual'
  if (gPerL > dose.maxGPerL * (1 + USUAL_SHARE)) return isWarned(plant, batch) ? 'usual' : 'more'
  return gPerL < dose.minGPerL * (1 - USUAL_SHARE) && !mayBeLittle(plant, batch) ? 'less' : 'usual'
}

/** Whether a spirit, % vol, lies outside of the strengths that are usual for a plant. */
export const isUnusualSpirit = (abvPercent: number, { min, max }: Botanical['spiritPercent']): boolean =>
  abvPercent > max + USUAL_PERCENT || abvPercent < min - USUAL_PERCENT
