import type { LiquidPart } from '../quantities.ts'
import { readLiquid } from './read-liquid.ts'
import { splitList } from './split-list.ts'

/**
 * Spirits joined with `+`: `750 ml 75.5% + 375 ml 40% vodka`, `vodka 40% 700 ml`; what is said beside the amount, the
 * strength and the sweetness is `words`.
 */
export const parseSpirits = (text: string): readonly LiquidPart[] =>
  splitList(text).map((typed) => readLiquid(typed, { styles: false }))
