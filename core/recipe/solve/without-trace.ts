import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import type { Outcome } from './outcome.ts'

/** The least that is worth weighing or pouring, and its share of what is there. Chosen for a kitchen; no source. */
const LEAST_ADDED = { sugarG: 5, waterMl: 10, share: 0.02 } as const

/** What a solve adds. */
interface AddedAmounts {
  readonly sugarG: Measured
  readonly waterG: Measured
  readonly waterMl: Measured
  readonly syrupG: Measured
  readonly syrupMl: Measured
  readonly dissolvesG: number | null
  readonly outcome: Pick<Outcome, 'volumeMl' | 'sugarGPerL'>
}

/** Whether so much water is more than a trace in what it makes. */
export const isWaterWorth = (waterMl: Measured, { volumeMl }: Pick<Outcome, 'volumeMl'>): boolean =>
  waterMl.value >= Math.max(LEAST_ADDED.waterMl, LEAST_ADDED.share * volumeMl.value)

/**
 * What is added, as it is told: sugar under 5 g or 2 % of all the sugar, and water under 10 ml or 2 % of all the liquid,
 * whichever is more, are left out.
 */
export function withoutTrace<Added extends AddedAmounts>(added: Added): Added {
  const { sugarG, waterMl, outcome } = added
  const allSugarG = (outcome.sugarGPerL.value * outcome.volumeMl.value) / 1000
  const hasSugar = sugarG.value >= Math.max(LEAST_ADDED.sugarG, LEAST_ADDED.share * allSugarG)
  const hasWater = isWaterWorth(waterMl, outcome)
  const none = exactly(0)
  const water = hasWater ? {} : { waterG: none, waterMl: none, dissolvesG: 0 }
  if (!hasSugar) {
    const syrup = { syrupG: hasWater ? added.waterG : none, syrupMl: hasWater ? waterMl : none }
    return { ...added, ...water, ...syrup, sugarG: none, dissolvesG: null }
  }
  return hasWater ? added : { ...added, ...water }
}
