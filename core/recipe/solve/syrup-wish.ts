import { DomainError } from '../../domain-error.ts'
import type { Liquid } from '../../liquid/liquid.ts'
import { type MaterialId, USUAL_MATERIAL } from '../../quantity/materials.ts'
import { fillerOf, gramOf } from '../sweetening.ts'
import { type SyrupWish, syrupFor } from './syrup-for.ts'

/** What a maker may say of the liqueur wanted. */
export interface SyrupTargets {
  readonly abvPercent?: number | undefined
  readonly sugarGPerL?: number | undefined
  readonly sugarPerWater?: number | undefined
}

/** How far three targets may disagree and still be one wish: as a share of the ratio. */
const AGREES_SHARE = 0.01

/** The wish that the targets named make, or null where fewer than two were named; three must agree. */
export function wishOf(
  infusion: Liquid,
  { abvPercent, sugarGPerL, sugarPerWater }: SyrupTargets,
  sweetener: MaterialId = USUAL_MATERIAL,
  filler: MaterialId | null = null,
): SyrupWish | null {
  if (abvPercent !== undefined && sugarGPerL !== undefined) {
    const wish: SyrupWish = { by: 'strength_and_sweetness', abvPercent, sugarGPerL }
    if (sugarPerWater !== undefined) checkRatio(infusion, wish, sugarPerWater, { sweetener, filler })
    return wish
  }
  if (sugarPerWater === undefined) return null
  if (abvPercent !== undefined) return { by: 'strength_and_ratio', abvPercent, sugarPerWater }
  if (sugarGPerL !== undefined) return { by: 'sweetness_and_ratio', sugarGPerL, sugarPerWater }
  return null
}

function checkRatio(
  infusion: Liquid,
  wish: Extract<SyrupWish, { by: 'strength_and_sweetness' }>,
  sugarPerWater: number,
  { sweetener, filler }: { readonly sweetener: MaterialId; readonly filler: MaterialId | null },
): void {
  const needed = syrupFor(infusion, wish, gramOf(sweetener), fillerOf(filler))
  const neededSugarPerWater = needed.waterG > 0 ? needed.sugarG / needed.waterG : null
  if (neededSugarPerWater !== null && Math.abs(neededSugarPerWater / sugarPerWater - 1) <= AGREES_SHARE) return
  throw new DomainError('too_many_options', 'targets_clash', {
    toAbvPercent: wish.abvPercent,
    toSugarGPerL: wish.sugarGPerL,
    sugarPerWater,
    neededSugarPerWater,
  })
}
