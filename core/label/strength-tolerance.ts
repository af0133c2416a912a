import type { Region } from './parse-region.ts'
import type { Cited } from './sources.ts'

/** How far the measured strength may lie from the label's, % vol to either side. */
export interface Tolerance extends Cited {
  readonly percent: number
  /** For a drink with macerated fruit or parts of plants, where the rule makes a difference. */
  readonly withPlantsPercent: number | null
}

export const strengthTolerance: Readonly<Record<Region, Tolerance>> = {
  eu: { percent: 0.3, withPlantsPercent: 1.5, trust: 'published', sources: ['eu_1169_2011'] },
  us: { percent: 0.3, withPlantsPercent: null, trust: 'published', sources: ['cfr_27_19'] },
  uk: { percent: 0.3, withPlantsPercent: 1.5, trust: 'published', sources: ['uk_si_1989_768', 'eu_1169_2011'] },
}
