import { weightInAirFromMassG } from '../../liquid/measure/weight-in-air.ts'
import { type Measured, times } from '../../quantity/measured/measured.ts'
import { USUAL_BOTTLE_ML } from '../../recipe/plan/parse-bottles.ts'
import { bottleStock } from './bottle-stock.ts'
import { contentsOf } from './contents.ts'
import type { JarState } from './jar-state.ts'

/** What a bottle takes. */
export interface BottleFill {
  /** At 20 °C; weighed in, it is right however warm the liquid is. */
  readonly volumeMl: number
  /** What a scale shows of it, g, the bottle not counted. */
  readonly weightG: Measured
}

/**
 * The weight of a full bottle's liquid, for each size that is filled, planned, or usual; none before it is strained. Its ± is that of
 * the liquid's density; that a scale shows 0.1 % less in air is counted (OIML R 22, table XII).
 */
export function fillsOf(story: JarState): readonly BottleFill[] {
  const { outcome, isEmpty } = contentsOf(story)
  if (story.strained === null || isEmpty) return []
  const density = outcome.densityGPerMl
  const filled = bottleStock(story).map(({ volumeMl }) => volumeMl)
  const planned = story.started.bottles.map(({ volumeMl }) => volumeMl)
  const sizesMl = filled.length > 0 ? filled : planned.length > 0 ? planned : [USUAL_BOTTLE_ML]
  return [...new Set(sizesMl)].map((volumeMl) => ({
    volumeMl,
    weightG: times(density, weightInAirFromMassG(volumeMl, density.value)),
  }))
}
