import type { Syrup } from './syrup.ts'
import { withoutTrace } from './without-trace.ts'

/** What of a syrup is worth adding, g of sugar and ml of water: 0 of what a kitchen cannot tell from nothing. */
export function worthAdding(syrup: Syrup): { readonly sugarG: number; readonly waterMl: number } {
  const { sugarG, waterMl } = withoutTrace(syrup)
  return { sugarG: sugarG.value, waterMl: waterMl.value }
}
