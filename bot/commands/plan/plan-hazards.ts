import type { Botanical } from '../../../core/botanical/botanical.ts'
import { planHazards } from '../../../core/botanical/evidence/plan-hazards.ts'
import type { Message } from '../../text/words.ts'

/** The cautions about plants; the same hazard of several plants once. */
export const hazardCautions = (botanicals: readonly Botanical[]) =>
  planHazards(botanicals.flatMap((each) => each.hazards)).map((hazard) => ({
    group: 'cautions' as const,
    key: 'plan_hazard' as const,
    values: { hazard, ids: botanicals.filter((each) => each.hazards.includes(hazard)).map(({ id }) => id) },
  })) satisfies readonly Message<'cautions'>[]
