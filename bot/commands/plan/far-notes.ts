import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { Message } from '../../text/words.ts'

type Planned = Plan['plants'][number]
type Batch = Pick<Plan, 'plants' | 'unknown' | 'ceilings' | 'steep'>

/** So many times what the most or the fewest take, a number slipped. */
const FAR_TIMES = 3

/** Amounts so far from what is usual that they may have been typed wrong. Of several plants any may be a pinch. */
export const isFarOff = ({ botanical: { id, dose }, massG, capped }: Planned, batch: Batch): boolean => {
  const { plants, unknown, ceilings, steep } = batch
  const gPerL = massG.value / (steep.pouredMl / 1000)
  if (gPerL > FAR_TIMES * dose.maxGPerL) return !ceilings.warned.some((each) => each.id === id)
  return gPerL < dose.minGPerL / FAR_TIMES && !capped && plants.length + unknown.length === 1
}

export const farNotes = (batch: Batch): readonly Message<'notes'>[] =>
  batch.plants
    .filter((plant) => isFarOff(plant, batch))
    .map(({ botanical: { id, dose, zestGPerFruit }, massG, count }) => ({
      group: 'notes',
      key: 'plan_far_off',
      values: {
        plant: { id, massG, count, ofZest: zestGPerFruit !== null },
        pouredMl: batch.steep.pouredMl,
        usualG: (dose.typicalGPerL * batch.steep.pouredMl) / 1000,
      },
    }))
