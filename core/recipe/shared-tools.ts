import type { Measured } from '../quantity/measured/measured.ts'
import { tools } from '../quantity/measured/precision.ts'

/** What a kitchen has one of. */
export type SharedTool = 'jug' | 'scale'

/** Names of amounts, by the unit they end in; `amount` is a volume or a mass. */
const AMOUNT = /(?:Ml|G)$|^amount$/

const SAME_SHARE = 1e-9

const isAbout = (value: number, other: number): boolean => Math.abs(value - other) <= SAME_SHARE * other

/**
 * Which tool measured an amount, as its ± tells: exactly a jug's share of it, or exactly a scale's. Null where the ± is another:
 * one that was typed, half a last digit, a cup, a handful of fruit. Amounts that are kept say no more than that of their tool.
 */
export function toolOf(name: string, { value, plusMinus }: Measured): SharedTool | null {
  if (!AMOUNT.test(name) || plusMinus === 0) return null
  if (isAbout(plusMinus, tools.volumeShare * value)) return 'jug'
  return isAbout(plusMinus, Math.max(tools.scaleG, tools.scaleShare * value)) ? 'scale' : null
}
