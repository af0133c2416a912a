import { findFood } from '../../../core/botanical/foods/find-food.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import { KEPT_ML_PER_G, MOST_WATER_SHARE } from '../../../core/recipe/plan/unknown-plant.ts'
import type { Message } from '../../text/words.ts'
import { note } from '../reply/outcome-reply.ts'

const namesIn = ({ unknown }: Pick<Plan, 'unknown'>): readonly string[] => unknown.map(({ name }) => name)

/** What whoever drinks of these foods may have to know, the worst of it before every other caution. */
export const foodCautions = (names: readonly string[]): readonly Message<'cautions'>[] => {
  const known = names.flatMap((name) => findFood(name)?.food ?? [])
  const notes = [...new Set(known.flatMap((food) => food.notes))]
  return names.length === 0 ? [] : [{ group: 'cautions', key: 'plan_unknown', values: { names, notes } }]
}

export const unknownCautions = (plan: Plan): readonly Message<'cautions'>[] => foodCautions(namesIn(plan))

/** Whose the amounts and days are, and what the ± holds. */
export function unknownNotes(plan: Plan): readonly Message<'notes'>[] {
  if (plan.unknown.length === 0) return []
  const range = {
    waterPercent: 100 * MOST_WATER_SHARE,
    keptMinMlPerG: KEPT_ML_PER_G.min,
    keptMaxMlPerG: KEPT_ML_PER_G.max,
  }
  return [
    { group: 'notes', key: 'plan_unknown_yours', values: { names: namesIn(plan) } },
    ...(plan.told.strainOn === null ? [note('plan_unknown_days')] : []),
    { group: 'notes', key: 'plan_unknown_range', values: range },
  ]
}
