import type { Measured } from '../quantity/measured/measured.ts'
import { sugarLimitGPerL } from './solubility.ts'

/**
 * Delle units of a liquid: how hard its alcohol and its dissolved sugar together make it for yeast.
 * @param abvPercent - % vol, 0 to 100.
 * @param dissolvedSugarGPerL - g/L, 0 and more; sugar that lies at the bottom does not count.
 * Error: where yeast stops was found between 75 and 85, by yeast, must and when the alcohol went in.
 * Source: DU = 4.5 × % vol + sugar g/L ÷ 10, vinlab.com of 10 April 2017, citing Margalit (2012) and Kunkee and Amerine,
 * Appl. Microbiol. 16 (1968) 1067–1075; range found by Amerine and Kunkee, Vitis 5 (1965) 187–194.
 */
export const delleUnits = (abvPercent: number, dissolvedSugarGPerL: number): number =>
  4.5 * abvPercent + dissolvedSugarGPerL / 10

/** Whether yeast can live in it. It tells nothing of mould on what floats above the liquid. */
export type Keeping = 'keeps' | 'undecided' | 'ferments'

/** From this strength on nothing ferments, sweet or not, % vol: it alone is 90 units. Derived; common practice, no source. */
export const KEEPS_ABV_PERCENT = 20
/** Below this one sugar alone is not to be relied on: film yeast grows up to about 14 % vol in warm wine. Judgement. */
export const LEAST_ABV_PERCENT = 15
/** Between these units it was found either way. Source: as `delleUnits`. */
export const LEAST_UNITS = 75
export const KEEPS_ABOVE_UNITS = 85

/** A strength is what its first decimal says: water is measured out in round numbers. */
const ROUNDING_PERCENT = 0.05
const ROUNDING_UNITS = 1e-9

/** Of a liquid whose strength, % vol, and dissolved sugar, g/L, are known exactly. */
export function keepingAt(abvPercent: number, dissolvedSugarGPerL: number): Keeping {
  if (abvPercent < LEAST_ABV_PERCENT - ROUNDING_PERCENT) return 'ferments'
  const units = delleUnits(abvPercent, dissolvedSugarGPerL)
  if (units > KEEPS_ABOVE_UNITS + ROUNDING_UNITS) return 'keeps'
  return units >= LEAST_UNITS - ROUNDING_UNITS ? 'undecided' : 'ferments'
}

export interface StrengthAndSugar {
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
}

/** The sugar that surely is dissolved, g/L: less its ±, and no more than stays dissolved at that strength. */
export const surelyDissolvedGPerL = ({ abvPercent, sugarGPerL }: StrengthAndSugar): number =>
  Math.max(0, Math.min(sugarGPerL.value - sugarGPerL.plusMinus, sugarLimitGPerL(abvPercent.value)))

/** A strength known no better than this is a guess, % vol: a hydrometer and a jug are within it. Judgement. */
const GUESSED_PERCENT = 1

const lowPercent = ({ abvPercent: { value, plusMinus } }: StrengthAndSugar): number => Math.max(0, value - plusMinus)

/**
 * As far as is known of a liquid: it keeps where it does at the low end of its strength too, and ferments where it does as
 * it stands; of a guess, such as how much of a fruit's water is in the jar, the low end decides. Sugar counts less its ±.
 */
export function keepingOf(of: StrengthAndSugar): Keeping {
  const { value, plusMinus } = of.abvPercent
  const sugarGPerL = surelyDissolvedGPerL(of)
  const atLeast = keepingAt(lowPercent(of), sugarGPerL)
  if (atLeast === 'keeps') return 'keeps'
  if (keepingAt(value, sugarGPerL) === 'ferments') return 'ferments'
  return atLeast === 'ferments' && plusMinus > GUESSED_PERCENT ? 'ferments' : 'undecided'
}

/** How weak something is, as it is told. */
export interface Weakness {
  readonly abvPercent: number
  /** How weak it may be, where only that is too weak; else null. */
  readonly lowAbvPercent: number | null
  readonly sugarGPerL: number
}

export function weaknessOf(of: StrengthAndSugar): Weakness {
  const { abvPercent, sugarGPerL } = of
  const isLowOnly = keepingOf(of) !== keepingAt(abvPercent.value, surelyDissolvedGPerL(of))
  return {
    abvPercent: abvPercent.value,
    lowAbvPercent: isLowOnly ? lowPercent(of) : null,
    sugarGPerL: sugarGPerL.value,
  }
}

/** The least whole strength, % vol, that keeps with so much dissolved sugar. */
export function keepsFromPercent(dissolvedSugarGPerL: number): number {
  for (let percent = LEAST_ABV_PERCENT; percent < KEEPS_ABV_PERCENT; percent++) {
    if (keepingAt(percent, dissolvedSugarGPerL) === 'keeps') return percent
  }
  return KEEPS_ABV_PERCENT
}
