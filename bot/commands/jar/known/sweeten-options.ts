import type { SugarRead, WaterRead } from '../../../../core/quantity/quantities.ts'
import { kitchenSugar, kitchenWater } from '../../../../core/quantity/write/made-amounts.ts'
import type { Syrup } from '../../../../core/recipe/solve/syrup.ts'
import { worthAdding } from '../../../../core/recipe/solve/worth-adding.ts'
import { kitchenRounded } from '../../../../core/recipe/tool-precision.ts'
import { type Kitchen, unitsIn } from '../../../text/messages/kitchen.ts'

/** What `/jar sweeten` is told once this syrup is in, as it was shown; nothing where none is wanted. */
export const syrupValues = (
  syrup: Syrup,
  kitchen: Kitchen,
): { readonly water?: WaterRead; readonly sugar?: SugarRead } => {
  const { sugarG, waterMl } = worthAdding(syrup)
  const { volume, mass } = unitsIn(kitchen)
  const amounts = [kitchenSugar(kitchenRounded(sugarG), syrup.sweetener, mass)]
  return {
    ...(sugarG > 0 && { sugar: { amounts, sweetener: null } }),
    ...(waterMl > 0 && { water: kitchenWater(kitchenRounded(waterMl), syrup.filler, volume) }),
  }
}
