import { checkCeilings } from '../../botanical/limits/ceilings.ts'
import { abvPercent, sugarGPerL } from '../../liquid/liquid.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import type { Portion } from '../portion.ts'
import { propagate } from '../propagate.ts'
import { inputsOf, steepLiquids, steepUnjudged } from '../steep.ts'
import type { Sweetening } from '../sweetening.ts'
import { weighedOut } from '../tool-precision.ts'
import type { PlannedPlant } from './plan-wish.ts'
import { plantOf } from './plant-of.ts'

export interface StrainedInfusion {
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
}

/**
 * What an infusion of these is expected to be when it is strained, for a maker who cannot measure it: strength and the
 * plants' own sugar. It is there already, so that it is not judged whether it keeps. Refuses what the ceilings refuse, and
 * what the plants drink up.
 */
export function strained(
  plants: readonly PlannedPlant[],
  spirits: readonly Portion[],
  sweetenings: readonly Sweetening[] = [],
): StrainedInfusion {
  const bare = { spirits, waterG: exactly(0), sweetenings, plants: [] }
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
  return propagate(inputsOf(steeping), (values) => {
    const { infusion } = steepLiquids(values)
    return { abvPercent: abvPercent(infusion), sugarGPerL: sugarGPerL(infusion) }
  })
}
