import { nameAfter } from '../../../core/jar/entry/name-after.ts'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import { asOptionProblem } from '../../calls/option.ts'
import type { SharedRecipe } from '../../calls/share-ref.ts'
import type { Context } from '../../chat/command.ts'
import type { ShopFor } from '../../text/messages/shopping.ts'
import { planAsked } from '../plan/plan-asked.ts'

/** The plan that a code tells, in the same amounts, from today; what is wrong with it is a problem of `option`. */
export function planOfCode(code: SharedRecipe, option: string, { nowMs, zone, settings, kitchen }: Context): Plan {
  const today = dayAt(zone, nowMs)
  const from = { from: { typed: '', is: code } }
  const setting = { command: 'plan', today, country: settings.country, start: today, kitchen, isTrial: true }
  return asOptionProblem(option, () => planAsked(from, setting)).planned
}

/** A plan is called after its first plant. */
export function planNamed(plan: Plan): ShopFor {
  const plantId = plan.plants[0]?.botanical.id ?? null
  return { plantId, name: plantId === null ? (nameAfter(plan) ?? '') : '' }
}
