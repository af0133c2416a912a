import { sugarGPerL } from '../../liquid/liquid.ts'
import type { Syrup } from './syrup.ts'

/** So little, or such a share of what it makes, tells nobody anything. Judgement. */
const LEAST_SUGAR_G = 5
const LEAST_WATER_ML = 10
const LEAST_SHARE = 0.02

/** What of a syrup is worth adding, g of sugar and ml of water: 0 of what a kitchen cannot tell from nothing. */
export function worthAdding({ sugarG, waterMl, outcome }: Pick<Syrup, 'sugarG' | 'waterMl' | 'outcome'>): {
  readonly sugarG: number
  readonly waterMl: number
} {
  const madeMl = outcome.volumeMl.value
  const madeSugarG = (sugarGPerL(outcome.liquid) * madeMl) / 1000
  const unlessLess = (amount: number, least: number, of: number): number =>
    amount < Math.max(least, LEAST_SHARE * of) ? 0 : amount
  return {
    sugarG: unlessLess(sugarG.value, LEAST_SUGAR_G, madeSugarG),
    waterMl: unlessLess(waterMl.value, LEAST_WATER_ML, madeMl),
  }
}
