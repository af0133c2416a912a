import { GLASS_ML, substances } from '../../../core/botanical/limits/substances.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { Message } from '../../text/words.ts'

/** Under so many milligrams in a glass nobody notices. Common practice, no source. */
const LEAST_MG = 20
const STEP_MG = 10

/** What a glass of the finished drink holds, rounded up. */
export function caffeineNotes({ ceilings }: Pick<Plan, 'ceilings'>): readonly Message<'notes'>[] {
  const share = ceilings.shares.find(({ hazard }) => hazard === 'caffeine')?.finishedShare ?? 0
  const mostMg = (substances.caffeine.mgPerLFinished * GLASS_ML) / 1000
  const mg = Math.ceil((share * mostMg) / STEP_MG) * STEP_MG
  return mg <= LEAST_MG ? [] : [{ group: 'notes', key: 'plan_caffeine', values: { mg, mostMg, glassMl: GLASS_ML } }]
}
