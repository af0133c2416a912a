import { findFood } from '../../../core/botanical/foods/find-food.ts'
import type { Span } from '../../../core/quantity/quantities.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import { KEPT_ML_PER_G, MOST_WATER_SHARE } from '../../../core/recipe/plan/unknown-plant.ts'
import type { Call } from '../../calls/call.ts'
import type { Given } from '../../calls/option.ts'
import type { Message } from '../../text/words.ts'
import { wholeDaysGiven } from './batch-options.ts'

const namesIn = ({ unknown }: Pick<Plan, 'unknown'>): readonly string[] => unknown.map(({ name }) => name)

/** What whoever drinks of these foods may have to know, the worst of it before every other caution. */
export const foodCautions = (names: readonly string[]): readonly Message<'cautions'>[] => {
  const known = names.flatMap((name) => findFood(name)?.food ?? [])
  const notes = [...new Set(known.flatMap((food) => food.notes))]
  return names.length === 0 ? [] : [{ group: 'cautions', key: 'plan_unknown', values: { names, notes } }]
}

export const unknownCautions = (plan: Plan): readonly Message<'cautions'>[] => foodCautions(namesIn(plan))

/** Two weeks, as many plants take. */
const EXAMPLE_DAYS = 14

/** Whose the amounts and days are, and what the ± holds. */
export function unknownNotes(plan: Plan, line: ((days: Given<Span>) => Call) | null): readonly Message<'notes'>[] {
  if (plan.unknown.length === 0) return []
  const range = {
    waterPercent: 100 * MOST_WATER_SHARE,
    keptMinMlPerG: KEPT_ML_PER_G.min,
    keptMaxMlPerG: KEPT_ML_PER_G.max,
  }
  return [
    { group: 'notes', key: 'plan_unknown_yours', values: { names: namesIn(plan) } },
    ...(plan.told.strainOn === null
      ? [
          {
            group: 'notes',
            key: 'plan_unknown_days',
            values: { line: line === null ? null : line(wholeDaysGiven(EXAMPLE_DAYS)) },
          } as const,
        ]
      : []),
    { group: 'notes', key: 'plan_unknown_range', values: range },
  ]
}
