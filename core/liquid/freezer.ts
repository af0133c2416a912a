import { DomainError } from '../domain-error.ts'
import { ethanolWaterDensityKgPerM3 } from './ethanol-water.ts'
import { freezesAtC, freezingPlusMinusC } from './freezing.ts'
import { abvPercent, type Liquid, sugar } from './liquid.ts'
import { findRoot } from './root.ts'
import { apparentVolumeMlPerG } from './sucrose-water.ts'

/** A home freezer whose own temperature nobody said. */
export const FREEZER_C = -18
/** Where the freezing points of ethanol and water end. */
const COLDEST_C = -115
/** From this share of its water as ice a liquid no longer pours: our estimate. */
const SOLID_FRACTION = 0.6

/** `pours`: surely; `should_pour`: no ice is computed, but first ice lies within its ±. */
export type FreezerState = 'pours' | 'should_pour' | 'slush' | 'solid'

export interface InFreezer {
  readonly state: FreezerState
  /** Share of the water that is ice, 0 to 1. */
  readonly iceFraction: number
}

/**
 * What a freezer makes of a liquid, given time. Ice is pure water, so it forms until what is left freezes at the
 * freezer's own temperature; sugar stays dissolved (its crystallising in the cold is slow and left out).
 * `solid` from 60 % of the water as ice.
 * @param freezesPlusMinusC - how well first ice is known, K; left out, as well as the model knows it.
 * Error: about 10 points of ice near its onset, less further on, from `freezingPlusMinusC`.
 */
export const inFreezer = (
  liquid: Liquid,
  freezerC = FREEZER_C,
  freezesPlusMinusC = freezingPlusMinusC(liquid),
): InFreezer => {
  checkFreezer(freezerC)
  const marginK = freezerC - freezesAtC(liquid)
  if (marginK >= 0 || liquid.waterG === 0) {
    const isSure = marginK > freezesPlusMinusC || liquid.waterG === 0
    return { state: isSure ? 'pours' : 'should_pour', iceFraction: 0 }
  }
  const excessK = (ice: number) => freezesAtC({ ...liquid, waterG: liquid.waterG * (1 - ice) }) - freezerC
  const iceFraction = excessK(1) > 0 ? 1 : findRoot({ f: excessK, low: 0, high: 1, tolerance: 1e-10 })
  return { state: iceFraction >= SOLID_FRACTION ? 'solid' : 'slush', iceFraction }
}

/**
 * The least strength, % vol, that stays free of ice at this sweetness; 0 where the sugar alone is enough.
 * Error: ±1.5 % vol. @param freezerC - °C, −115 or above; colder throws `temperature_out_of_range`.
 */
export const leastAbvIceFree = (sugarGPerL: number, freezerC = FREEZER_C): number => {
  checkFreezer(freezerC)
  const solventMl = 1000 - sugarGPerL * apparentVolumeMlPerG(sugarGPerL)
  const litre = (massFraction: number): Liquid => {
    const solventG = (solventMl * ethanolWaterDensityKgPerM3(massFraction, 20)) / 1000
    return {
      ...sugar(sugarGPerL),
      ethanolG: solventG * massFraction,
      waterG: solventG * (1 - massFraction),
    }
  }
  const excessK = (massFraction: number) => freezesAtC(litre(massFraction)) - freezerC
  if (excessK(0) <= 0) return 0
  return abvPercent(litre(findRoot({ f: excessK, low: 0, high: 1, tolerance: 1e-10 })))
}

function checkFreezer(tempC: number): void {
  if (!(tempC >= COLDEST_C && tempC <= 40)) {
    throw new DomainError('bad_value', 'temperature_out_of_range', { tempC, lowC: COLDEST_C, highC: 40 })
  }
}
