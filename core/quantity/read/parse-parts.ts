import type { LiquidPart } from '../quantities.ts'
import { readLiquid } from './read-liquid.ts'
import { splitList } from './split-list.ts'

/**
 * Liquids joined with `+`: `600 ml 47% 250 g/L + 300 ml 33% dry`, `1 l vodka 40%`; a strength or sweetness left out is null,
 * what else is said is `words`.
 */
export const parseParts = (text: string): readonly LiquidPart[] =>
  splitList(text).map((typed) => readLiquid(typed, { styles: true }))
