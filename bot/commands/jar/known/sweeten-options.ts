import type { Syrup } from '../../../../core/recipe/solve/syrup.ts'
import { pouredMl, weighedG } from '../../../../core/recipe/tool-precision.ts'

/** What `/jar sweeten` is told once this syrup is in, as it was shown; nothing where none is wanted. */
export const sweetenOptions = ({ waterMl, sugarG }: Syrup): readonly (readonly [option: string, text: string])[] => [
  ...(waterMl.value > 0 ? [['water', `${pouredMl(waterMl.value)} ml`] as const] : []),
  ...(sugarG.value > 0 ? [['sugar', `${weighedG(sugarG.value)} g`] as const] : []),
]
