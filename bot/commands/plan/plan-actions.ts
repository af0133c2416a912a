import { DomainError } from '../../../core/domain-error.ts'
import { nameAfter } from '../../../core/jar/entry/name-after.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { parseSweetness } from '../../../core/quantity/read/parse-sweetness.ts'
import { styleSweetnessGPerL } from '../../../core/quantity/read/sweetness-at.ts'
import { daysBetween, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import { recipeOfPlan } from '../../../core/shopping/recipe-of-plan.ts'
import { call } from '../../calls/call.ts'
import { pastIn } from '../../calls/jar-options.ts'
import type { InputOf } from '../../calls/signatures.ts'
import { ChatError } from '../../chat/chat-error.ts'
import type { Action } from '../../chat/reply.ts'
import { percentGiven, sweetnessGiven } from './batch-options.ts'
import { planAsked } from './plan-asked.ts'
import type { AskedPlan, Setting } from './plan-wish.ts'

/** The plan as a jar, with all that was typed, which finds its name when it is begun; one that begins another day begins when it is started. */
export function startAction(
  { start: _, have: _had, ...input }: InputOf<'plan'>,
  plan: Plan,
  { start, today }: { readonly start: CalendarDay; readonly today: CalendarDay },
): readonly Action[] {
  if (nameAfter(plan) === null) return []
  const when = daysBetween(start, today) < 0 ? { when: pastIn(isoDay(start)) } : {}
  const label = { group: 'actions', key: 'start_jar', values: undefined } as const
  return [{ label, call: call('jar start', { ...input, ...when }) }]
}

/** What to buy for it, by its code; nothing of what no code can tell. */
export function shoppingAction(
  { bottles, have }: Pick<InputOf<'plan'>, 'bottles' | 'have'>,
  { planned, wish }: Pick<AskedPlan<unknown>, 'planned' | 'wish'>,
): readonly Action[] {
  const recipe = recipeOfPlan(planned, wish)
  if (recipe === null) return []
  const plans = [{ recipe, shareId: null, owner: null }]
  const label = { group: 'actions', key: 'shopping_plan', values: undefined } as const
  return [{ label, call: call('shopping', { plans, have, bottles }) }]
}

type PlanInput = InputOf<'plan'>
export type Wish = Pick<PlanInput, 'to-sweetness' | 'to-strength'>

/** Below this there is nothing to make drier, g/L. */
const LEAST_DRIER_GPERL = 60
/** A step that is tasted, % vol. */
const STEP_PERCENT = 5

const styleWish = (word: string): Wish => ({ 'to-sweetness': { typed: word, is: parseSweetness(word) } })

/** The next sweetness that has a name; below the least of them a good deal less. */
export function drier(sugarGPerL: number): Wish | null {
  const [word] = Object.entries(styleSweetnessGPerL).findLast(([, named]) => named < 0.9 * sugarGPerL) ?? []
  if (word !== undefined) return styleWish(word)
  return sugarGPerL < LEAST_DRIER_GPERL ? null : { 'to-sweetness': sweetnessGiven(Math.round(sugarGPerL / 15) * 10) }
}

/** The next sweetness that has a name; above the most of them a good deal more. */
export function sweeter(sugarGPerL: number): Wish {
  const [word] = Object.entries(styleSweetnessGPerL).find(([, named]) => named > 1.1 * sugarGPerL) ?? []
  return word === undefined ? { 'to-sweetness': sweetnessGiven(Math.round(sugarGPerL / 8) * 10) } : styleWish(word)
}

export const stronger = (percent: number): Wish => ({
  'to-strength': percentGiven(Math.round(percent + STEP_PERCENT)),
})

/** A step less; null where little is left. */
export const weaker = (percent: number): Wish | null =>
  percent < 3 * STEP_PERCENT ? null : { 'to-strength': percentGiven(Math.round(percent - STEP_PERCENT)) }

/** Whole lines for the same batch, otherwise: each was tried. */
export function changeActions(input: PlanInput, { targets }: Plan, setting: Setting): readonly Action[] {
  const { abvPercent, sugarGPerL } = targets
  const wishes = [
    { key: 'plan_drier', wish: drier(sugarGPerL) },
    { key: 'plan_stronger', wish: stronger(abvPercent) },
  ] as const
  return wishes.flatMap(({ key, wish }): readonly Action[] => {
    const changed = { ...input, ...wish }
    if (wish === null || !canBe(changed, setting)) return []
    return [{ label: { group: 'actions', key, values: undefined }, call: call('plan', changed) }]
  })
}

/** What would be planned; null where it is refused. */
export function trialOf(input: PlanInput, setting: Setting): Plan | null {
  try {
    return planAsked(input, { ...setting, isTrial: true }).planned
  } catch (error) {
    if (error instanceof DomainError || error instanceof ChatError) return null
    throw error
  }
}

/** Whether it can be planned. */
export const canBe = (input: PlanInput, setting: Setting): boolean => trialOf(input, setting) !== null
