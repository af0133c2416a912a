import type { HazardKey } from '../../../core/botanical/evidence/hazards.ts'
import type { PlanHazard } from '../../../core/botanical/evidence/plan-hazards.ts'
import type { Plain } from './plain.ts'

/** Something that plants can do to somebody, or to the look of a drink. */
export interface HazardOf {
  readonly hazard: HazardKey
  /** The plants that have it. */
  readonly ids: readonly string[]
}

export interface HazardMessages {
  notes: Plain<'making_trust'> & {
    botanical_look: HazardOf
    /** Plants of which something that can hurt is known from memory. */
    hazards_memory: { readonly ids: readonly string[] }
  }
  cautions: Plain<
    | 'making_food_spirit'
    | 'making_no_flame'
    | 'making_not_for'
    | 'making_other_alcohol'
    | 'making_vapour'
    | 'making_children'
    | 'making_spent_plants'
    | 'making_no_distilling'
    | 'making_no_lead'
    | 'making_no_dairy_egg'
  > & {
    /** What may kill or maim, in few words; each is said in full one question deeper. */
    plan_grave: { readonly hazards: readonly PlanHazard[]; readonly ids: readonly string[]; readonly burns: boolean }
    plan_hazard: { readonly hazard: PlanHazard; readonly ids: readonly string[] }
    botanical_hazard: HazardOf
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly hazard: HazardMessages
  }
}
