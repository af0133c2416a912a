import { checkCeilings } from '../../botanical/limits/ceilings.ts'
import { exactly } from '../../quantity/measured/measured.ts'
import type { Portion } from '../portion.ts'
import { type Steeping, steepUnjudged } from '../steep.ts'
import { weighedOut } from '../tool-precision.ts'
import type { PlannedPlant } from './plan-wish.ts'
import { plantOf } from './plant-of.ts'

/**
 * What went into a jar whose infusion was strained, each plant as said or at its typical dose. It is there already, so that it is
 * not judged whether it keeps. Refuses what the ceilings refuse, and what the plants drink up.
 */
export function strainedSteeping(plants: readonly PlannedPlant[], spirits: readonly Portion[]): Steeping {
  const bare = { spirits, waterG: exactly(0), sweetenings: [], plants: [] }
  const { pouredMl } = steepUnjudged(bare)
  const weighed = plants.map(({ botanical, massG }) => ({
    botanical,
    massG: massG ?? weighedOut((botanical.dose.typicalGPerL * pouredMl) / 1000),
  }))
  const steeping = { ...bare, plants: weighed.map(({ botanical, massG }) => plantOf(botanical, massG)) }
  steepUnjudged(steeping)
  checkCeilings(
    weighed.map(({ botanical, massG }) => ({ botanical, massG: massG.value })),
    pouredMl,
  )
  return steeping
}
