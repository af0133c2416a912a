import { caffeineMgInGlass, MOST_CAFFEINE_MG } from '../../../core/botanical/limits/caffeine.ts'
import { GLASS_ML } from '../../../core/botanical/limits/substances.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { Message } from '../../text/words.ts'

/** What a glass of the finished drink holds, where anybody notices it. */
export function caffeineNotes({ ceilings }: Pick<Plan, 'ceilings'>): readonly Message<'notes'>[] {
  const mg = caffeineMgInGlass(ceilings.shares.find(({ hazard }) => hazard === 'caffeine')?.finishedShare ?? 0)
  const values = { mostMg: MOST_CAFFEINE_MG, glassMl: GLASS_ML }
  return mg === null ? [] : [{ group: 'notes', key: 'plan_caffeine', values: { mg, ...values } }]
}
