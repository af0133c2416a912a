import type { Botanical } from '../../../core/botanical/botanical.ts'
import { hazards } from '../../../core/botanical/evidence/hazards.ts'
import { type PlanHazard, planHazards } from '../../../core/botanical/evidence/plan-hazards.ts'
import type { Message } from '../../text/words.ts'

/** Nothing of it happens in spirit. */
const NOT_IN_SPIRIT: ReadonlySet<PlanHazard> = new Set(['never_in_oil'])

/** What plants can do that kills or maims, in few words, and that strong spirit burns; none where they do nothing. */
export function graveCautions(botanicals: readonly Botanical[], burns: boolean): readonly Message<'cautions'>[] {
  const grave = planHazards(botanicals.flatMap((each) => each.hazards)).filter(
    (hazard) => ['critical', 'high'].includes(hazards[hazard].severity) && !NOT_IN_SPIRIT.has(hazard),
  )
  const values = { hazards: grave, ids: botanicals.map(({ id }) => id), burns }
  return grave.length === 0 ? [] : [{ group: 'cautions', key: 'plan_grave', values }]
}
