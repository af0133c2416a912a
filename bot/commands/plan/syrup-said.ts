import type { OwnSyrup } from '../../../core/recipe/plan/own-syrup.ts'
import type { PlanWish } from '../../../core/recipe/plan/plan-wish.ts'
import { joinSweetenings } from '../../../core/recipe/sweetening.ts'
import type { InputOf } from '../../calls/signatures.ts'
import { sweeteningsOf, waterG } from '../options/input-to-portion.ts'

type SyrupWish = Pick<PlanWish, 'sweetenings' | 'sweetener' | 'filler'> & { readonly own?: OwnSyrup }

/** What sweetens. Sugar of one kind beside a recipe's own water is the syrup of it; any other amount goes in with the plants. */
export function syrupSaid({ sugar, water }: Pick<InputOf<'plan'>, 'sugar' | 'water'>): SyrupWish {
  const sweetenings = sweeteningsOf(sugar)
  const sweetener = sugar?.is.sweetener ?? null
  if (water === undefined) return { sweetenings, sweetener, filler: null }
  if (typeof water.is === 'string') return { sweetenings, sweetener, filler: water.is }
  const own = { typed: water.typed, is: water.is }
  const [juice] = sweeteningsOf(undefined, own)
  const syrup = { filler: juice?.material ?? null }
  const given = waterG(own).value + (juice?.massG.value ?? 0)
  const [only, ...others] = joinSweetenings(sweetenings)
  if (only === undefined) return { sweetenings, sweetener, ...syrup, own: { waterG: given, sugarG: null } }
  if (sweetener !== null || others.length > 0) {
    return { sweetenings, sweetener, ...syrup, own: { waterG: given, sugarG: sweetener === null ? 0 : null } }
  }
  return { sweetenings: [], sweetener: only.material, ...syrup, own: { waterG: given, sugarG: only.massG.value } }
}
