import type { Targets } from '../../../../core/recipe/targets.ts'
import { kitchenSweetness } from '../../../../core/recipe/tool-precision.ts'
import type { SymptomId } from '../../../../core/trouble/symptoms.ts'

/** What the last batch was, and what the next one is to be for how that tasted. */
export interface Mended {
  readonly from: Targets
  readonly to: Targets
  /** It came out so, else it was planned so. */
  readonly isMade: boolean
}

/** A step that is tasted: a fifth of the sugar, and this much of the strength, % vol. Judgement. */
const LESS_SUGAR = 0.8
const STEP_PERCENT = 5
/** Below this there is nothing to take away, g/L and % vol. */
const LEAST_GPERL = 60
const LEAST_PERCENT = 15

interface Stepped {
  readonly to: Targets
  /** What of the sugar in the jar goes with it; null where it is no matter of sugar. */
  readonly sugarShare: number | null
}

/** A step from what it was; null where its taste is no matter of sugar or strength, or little is left to take away. */
export function steppedFrom(symptom: SymptomId, { abvPercent, sugarGPerL }: Targets): Stepped | null {
  const sweetened = (share: number): Stepped => ({
    to: { abvPercent, sugarGPerL: kitchenSweetness(share * sugarGPerL) },
    sugarShare: share,
  })
  switch (symptom) {
    case 'too_sweet':
      return sugarGPerL < LEAST_GPERL ? null : sweetened(LESS_SUGAR)
    case 'too_dry_or_sour':
      return sweetened(1 / LESS_SUGAR)
    case 'too_weak':
      return { to: { abvPercent: abvPercent + STEP_PERCENT, sugarGPerL }, sugarShare: null }
    case 'harsh_hot':
      return abvPercent < LEAST_PERCENT
        ? null
        : { to: { abvPercent: abvPercent - STEP_PERCENT, sugarGPerL }, sugarShare: null }
    default:
      return null
  }
}
