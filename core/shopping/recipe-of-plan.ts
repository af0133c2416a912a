import { unlessRefused } from '../domain-error.ts'
import { startedFrom } from '../jar/entry/start-from-plan.ts'
import { withReachable } from '../jar/state/recipe-of.ts'
import { dayFromIso, daysBetween } from '../quantity/time/calendar-day.ts'
import { withDays } from '../recipe/batch.ts'
import type { Recipe } from '../recipe/code/recipe.ts'
import { rounded } from '../recipe/code/recipe-batch.ts'
import type { Plan } from '../recipe/plan/plan.ts'
import type { PlanWish } from '../recipe/plan/plan-wish.ts'

/** A plan in the numbers of a code; null where no code can tell it: of a plant that is not in the catalogue, or too long. */
export function recipeOfPlan(plan: Plan, wish: PlanWish): Recipe | null {
  const batch = withDays(startedFrom(plan, wish, ''), (day) => daysBetween(dayFromIso(day), wish.start))
  return unlessRefused(() =>
    withReachable(rounded({ ...batch, spirits: plan.steeping.spirits, targets: null }), plan.targets),
  )
}
