import { asInvertSugarGPerL } from '../liquid/invert-sugar.ts'
import { abvPercent, massG, sugarG, sugarGPerL } from '../liquid/liquid.ts'
import { type MaterialId, materialOf, USUAL_MATERIAL } from '../quantity/materials.ts'
import type { Measured } from '../quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../recipe/portion.ts'
import { propagate } from '../recipe/propagate.ts'
import type { Region } from './parse-region.ts'
import { type Verdict, verdicts } from './verdict.ts'

export interface Label {
  readonly abvPercent: Measured
  readonly invertGPerL: Measured
  readonly sugarMassPercent: Measured
  readonly verdicts: readonly Verdict[]
  /** What a limit is nearer to than the drink's own ±. */
  readonly tooClose: readonly ('strength' | 'sugar')[]
}

const isClose = ({ value, plusMinus }: Measured, ...limits: readonly (number | null)[]): boolean =>
  limits.some((limit) => limit !== null && Math.abs(value - limit) < plusMinus)

/** Only the sucrose among sugars takes up water: honey is inverted already. Its longer sugars count as they are: estimated. */
function asInvert(sugarGPerL: number, material: MaterialId): number {
  const { sucrose, glucoseAndFructose, longer } = materialOf(material).per100G
  const all = sucrose + glucoseAndFructose + longer
  const share = all === 0 ? 1 : sucrose / all
  return asInvertSugarGPerL(sugarGPerL * share) + sugarGPerL * (1 - share)
}

/**
 * What a drink may be called where it is sold.
 * @param drink - a litre of it; its sugar is the sugars of what sweetens it, as weighed.
 * @param plants - ids of all its plants, null where not known.
 */
export function label(
  drink: Portion,
  plants: readonly string[] | null,
  regions: readonly Region[],
  sweetener: MaterialId = USUAL_MATERIAL,
): Label {
  const counted = propagate({ drink }, (values) => {
    const liquid = liquidOf(values.drink)
    return {
      abvPercent: abvPercent(liquid),
      invertGPerL: asInvert(sugarGPerL(liquid), sweetener),
      sugarMassPercent: (100 * sugarG(liquid)) / massG(liquid),
    }
  })
  const found = verdicts(
    {
      abvPercent: counted.abvPercent.value,
      invertGPerL: counted.invertGPerL.value,
      sugarMassPercent: counted.sugarMassPercent.value,
      plants,
      plantGPerL: null,
      steepDays: null,
    },
    regions,
  )
  // A name that no home-made drink can carry has no edge to be near to.
  const open = found.filter(({ category }) => category.also.length === 0)
  const strengthIsClose = open.some(({ category: { abvPercent: limits } }) =>
    isClose(counted.abvPercent, limits.least, limits.most),
  )
  const sugarIsClose = open.some(
    ({ category, leastInvertGPerL }) =>
      isClose(counted.invertGPerL, leastInvertGPerL, category.invertGPerL.most) ||
      isClose(counted.sugarMassPercent, category.leastSugarMassPercent),
  )
  return {
    ...counted,
    verdicts: found,
    tooClose: [...(strengthIsClose ? (['strength'] as const) : []), ...(sugarIsClose ? (['sugar'] as const) : [])],
  }
}

/** The narrowest name of a region that the drink may carry, or null. */
export const bestOf = ({ verdicts }: Label, region: Region): Verdict | null =>
  verdicts.filter(({ category, meets }) => meets && category.region === region).at(-1) ?? null
