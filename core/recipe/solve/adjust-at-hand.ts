import { DomainError } from '../../domain-error.ts'
import { abvPercent, sugarGPerL } from '../../liquid/liquid.ts'
import type { MaterialId } from '../../quantity/materials.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../portion.ts'
import { valuesOf } from '../propagate.ts'
import { gramOf } from '../sweetening.ts'
import type { Targets } from '../targets.ts'
import { type Adjustment, adjust } from './adjust.ts'
import { sweetnessAlone } from './sweetness-alone.ts'

/** The strongest spirit that is sold to drink, % vol. */
const STRONG_PERCENT = 95
/** A spirit no stronger than this above what is wanted would take more of itself than there is, % vol. Judgement. */
const LEAST_ABOVE_PERCENT = 5

/** What is wished for: one of them, or both. */
export interface AdjustWish {
  readonly abvPercent: number | null
  readonly sugarGPerL: number | null
}

/** What to add, and the spirit it goes by; null where none is added. */
export interface AdjustedAtHand {
  readonly adjustment: Adjustment
  readonly spiritAbv: Measured | null
  /** Whether nobody named that spirit. */
  readonly isSpiritAssumed: boolean
}

/**
 * What brings a liqueur to a wish with what is at hand: by sugar or water alone where that does, else with the spirit it was
 * made of, or the strongest that is sold. More sweetness alone takes a little strength along; less of it keeps the strength.
 */
export function adjustAtHand(
  liqueur: Portion,
  wish: AdjustWish,
  spirit: { readonly said: Measured | null; readonly ownPercent: number },
  sweetener: MaterialId,
): AdjustedAtHand {
  const now = liquidOf(valuesOf(liqueur))
  const sweeter = wish.sugarGPerL !== null && wish.sugarGPerL > sugarGPerL(now)
  if (wish.abvPercent === null && sweeter && spirit.said === null) {
    const targets = sweetnessAlone(now, wish.sugarGPerL ?? 0, gramOf(sweetener))
    return { adjustment: adjust(liqueur, targets, null, sweetener), spiritAbv: null, isSpiritAssumed: false }
  }
  const targets: Targets = {
    abvPercent: wish.abvPercent ?? abvPercent(now),
    sugarGPerL: wish.sugarGPerL ?? sugarGPerL(now),
  }
  if (spirit.said !== null) {
    return {
      adjustment: adjust(liqueur, targets, spirit.said, sweetener),
      spiritAbv: spirit.said,
      isSpiritAssumed: false,
    }
  }
  const without = withoutSpirit(liqueur, targets, sweetener)
  if (without !== null) return { adjustment: without, spiritAbv: null, isSpiritAssumed: false }
  const isStrong = spirit.ownPercent > targets.abvPercent + LEAST_ABOVE_PERCENT
  const spiritAbv = exactly(isStrong ? spirit.ownPercent : STRONG_PERCENT)
  return { adjustment: adjust(liqueur, targets, spiritAbv, sweetener), spiritAbv, isSpiritAssumed: true }
}

function withoutSpirit(liqueur: Portion, targets: Targets, sweetener: MaterialId): Adjustment | null {
  try {
    return adjust(liqueur, targets, null, sweetener)
  } catch (error) {
    if (error instanceof DomainError) return null
    throw error
  }
}
