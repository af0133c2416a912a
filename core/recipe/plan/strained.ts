import { checkCeilings } from '../../botanical/ceilings.ts'
import { abvPercent, sugarGPerL } from '../../liquid/liquid.ts'
import { exactly, type Measured } from '../../quantity/measured.ts'
import { weighedOut } from '../by-tool.ts'
import type { Portion } from '../portion.ts'
import { propagate } from '../propagate.ts'
import { inputsOf, steep, steepLiquids } from '../steep.ts'
import type { PlannedPlant } from './plan.ts'
import { plantOf } from './plant-of.ts'
import { ofStrength, orAdvised } from './strong-enough.ts'

export interface Strained {
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
}

/**
 * What an infusion of these is expected to be when it is strained, for a maker who cannot measure it: strength and the
 * plants' own sugar. Refuses what `steep` and the ceilings refuse.
 */
export const strained = (
  plants: readonly PlannedPlant[],
  spirits: readonly Portion[],
  sugarG = exactly(0),
): Strained => {
  const { steep: _, ...made } = orAdvised(() => strainedAsIs(plants, spirits, sugarG), {
    isSpiritGiven: true,
    spirit: (abvPercent) => strainedAsIs(plants, ofStrength(spirits, abvPercent), sugarG),
    steepAt: null,
    plants: null,
    sugar:
      sugarG.value === 0
        ? null
        : (share) =>
            strainedAsIs(plants, spirits, { value: sugarG.value * share, plusMinus: sugarG.plusMinus * share }),
  })
  return made
}

function strainedAsIs(plants: readonly PlannedPlant[], spirits: readonly Portion[], sugarG: Measured) {
  const bare = { spirits, waterG: exactly(0), sugarG, plants: [] }
  const { pouredMl } = steep(bare)
  const weighed = plants.map(({ botanical, massG }) => ({
    botanical,
    massG: massG ?? weighedOut((botanical.dose.typicalGPerL * pouredMl) / 1000),
  }))
  const steeping = { ...bare, plants: weighed.map(({ botanical, massG }) => plantOf(botanical, massG)) }
  const steeped = steep(steeping)
  checkCeilings(
    weighed.map(({ botanical, massG }) => ({ botanical, massG: massG.value })),
    pouredMl,
  )
  const found = propagate(inputsOf(steeping), (values) => {
    const { infusion } = steepLiquids(values)
    return { abvPercent: abvPercent(infusion), sugarGPerL: sugarGPerL(infusion) }
  })
  return { ...found, steep: steeped }
}
