import type { SugarRead, Volume } from '../../../../core/quantity/quantities.ts'
import { millilitres, sugarGrams } from '../../../../core/quantity/write/made-amounts.ts'
import type { Syrup } from '../../../../core/recipe/solve/syrup.ts'
import { pouredMl, weighedG } from '../../../../core/recipe/tool-precision.ts'

/** What `/jar sweeten` is told once this syrup is in, as it was shown; nothing where none is wanted. */
export const syrupValues = ({
  waterMl,
  sweetener,
  sugarG,
}: Syrup): { readonly water?: Volume; readonly sugar?: SugarRead } => ({
  ...(waterMl.value > 0 && { water: millilitres(pouredMl(waterMl.value)) }),
  ...(sugarG.value > 0 && {
    sugar: { amounts: [sugarGrams(weighedG(sugarG.value), sweetener)], sweetener: null },
  }),
})
