import { abvPercent, gramsOf, type Liquid, massG, mix, sugarGPerL } from '../../liquid/liquid.ts'
import { findRoot } from '../../liquid/root.ts'
import { enoughG } from '../solve/root-bracket.ts'
import type { Targets } from '../targets.ts'

/** What a recipe has go in after straining. */
export interface OwnSyrup {
  /** Grams of water, or of what stands for it. */
  readonly waterG: number
  /** Grams of what sweetens; null where the recipe leaves that open. */
  readonly sugarG: number | null
}

interface Grams {
  /** A gram of what sweetens, and of what stands for the water. */
  readonly gram: Liquid
  readonly filler: Liquid
  /** How sweet where neither the recipe nor a wish says, g/L. */
  readonly usualGPerL: number
}

const TOLERANCE = 1e-13

/** As much of something as brings a liquid to where nothing lacks; none where it is there already. */
const untilNoneLacks = (infusion: Liquid, lack: (addedG: number) => number): number =>
  lack(0) <= 0 ? 0 : findRoot({ f: lack, low: 0, high: enoughG(lack, massG(infusion)), tolerance: TOLERANCE })

/** What a recipe's own water and sugar make of the infusion; a wished strength stands for its water, a wished sweetness for its sugar. */
export function targetsOfOwn(
  infusion: Liquid,
  { waterG, sugarG }: OwnSyrup,
  wished: { readonly abvPercent?: number | undefined; readonly sugarGPerL?: number | undefined },
  { gram, filler, usualGPerL }: Grams,
): Targets {
  const made = (water: number, sugar: number): Liquid => mix(infusion, gramsOf(filler, water), gramsOf(gram, sugar))
  const isSugarLeft = wished.sugarGPerL === undefined && sugarG !== null
  const toGPerL = wished.sugarGPerL ?? usualGPerL
  if (wished.abvPercent !== undefined) {
    if (!isSugarLeft) return { abvPercent: wished.abvPercent, sugarGPerL: toGPerL }
    const tooStrong = (addedG: number) => abvPercent(made(addedG, sugarG)) - wished.abvPercent!
    const sweetness = sugarGPerL(made(untilNoneLacks(infusion, tooStrong), sugarG))
    return { abvPercent: wished.abvPercent, sugarGPerL: sweetness }
  }
  const lack = (addedG: number) => toGPerL - sugarGPerL(made(waterG, addedG))
  const whole = made(waterG, isSugarLeft ? sugarG : untilNoneLacks(infusion, lack))
  return { abvPercent: abvPercent(whole), sugarGPerL: sugarGPerL(whole) }
}
