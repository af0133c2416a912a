import { DomainError } from '../domain-error.ts'
import { checkedAbv } from './ethanol-water.ts'
import { besideSucrose } from './freezing.ts'
import { abvPercent, type Liquid, sugarGPerL } from './liquid.ts'
import { monotoneCubic, type Point } from './monotone-cubic.ts'

/**
 * Sucrose in a saturated liqueur at 14 °C: % vol of the finished liqueur, g/L.
 * Source: Scheibler, Ber. dtsch. chem. Ges. 5 (1872) 343, as in Seidell, Solubilities (from memory); his solvent
 * strengths turned into finished ones through the density he measured. Last point: 0.2 g/100 mL in absolute ethanol.
 */
const SATURATED: readonly Point[] = [
  [0, 875],
  [4.9, 815],
  [10.7, 745],
  [17.2, 679],
  [25.5, 580],
  [35.4, 471],
  [47.4, 339],
  [62.1, 188],
  [77.1, 66],
  [89.8, 9],
  [100, 2],
]
const saturatedGPerL = monotoneCubic(SATURATED)

/** Shares of the limit: nearer than this it may crystallise in a cold cellar; beyond the other it surely does. */
const MAY_CRYSTALLISE = 0.85
const SURELY_CRYSTALLISES = 1.1

/**
 * The most sucrose that stays dissolved at a cellar's 14 °C, g/L of the finished liqueur.
 * @param abvPercent - strength of the finished liqueur, % vol, 0 to 100; outside, throws `strength_out_of_range`.
 * Error: ±10 %; Schrefeld (1894) gives 10–15 % more above 40 % vol.
 * Source: Scheibler 1872, from memory, see `SATURATED`.
 */
export const sugarLimitGPerL = (abvPercent: number): number => saturatedGPerL(checkedAbv(abvPercent))

/** The sweetest liqueur of this strength that keeps its sugar dissolved without doubt, g/L: 85 % of the limit. */
export const largestSweetnessGPerL = (abvPercent: number): number => MAY_CRYSTALLISE * sugarLimitGPerL(abvPercent)

/** `not_known`: beyond the limit, but within its error. */
export type SugarState = 'dissolved' | 'may_crystallise' | 'not_known' | 'refused'

/** From this effect on first ice beside sucrose on, most of the sugar is glucose and fructose: halfway to invert sugar. */
const MOSTLY_HEXOSES = 1.4

/**
 * Whether a liquid's sugar stays dissolved: its sweetness against the limit at its strength, which is that of sucrose. Glucose and
 * fructose dissolve otherwise, fructose much better, and nobody has measured them in a liqueur: of them nothing is refused.
 */
export const sugarState = (liquid: Liquid): SugarState => {
  const share = sugarGPerL(liquid) / sugarLimitGPerL(abvPercent(liquid))
  if (share < MAY_CRYSTALLISE) return 'dissolved'
  if (share <= 1) return 'may_crystallise'
  return share <= SURELY_CRYSTALLISES || besideSucrose(liquid) > MOSTLY_HEXOSES ? 'not_known' : 'refused'
}

/**
 * Sucrose by mass, 0 to 1, in a saturated solution in water.
 * @param tempC - °C, 0 to 100; outside, throws `temperature_out_of_range`.
 * Error: 0.0035 against a Russian sugar-technology table, 0.0051 against the CRC values.
 * Source: Vavrinecz (1962), used by ICUMSA SPS-2; coefficients from memory.
 */
export const sucroseSaturationFraction = (tempC: number): number => {
  if (!(tempC >= 0 && tempC <= 100)) {
    throw new DomainError('bad_value', 'temperature_out_of_range', { tempC, lowC: 0, highC: 100 })
  }
  return (64.447 + tempC * (0.08222 + tempC * (1.6169e-3 + tempC * (-1.558e-6 - tempC * 4.63e-8)))) / 100
}

/** The most sucrose, g, that this much water dissolves. */
export const dissolvableSugarG = (waterG: number, tempC = 20): number => {
  const fraction = sucroseSaturationFraction(tempC)
  return (waterG * fraction) / (1 - fraction)
}

/** Grams of this sugar that its water dissolves at 20 °C; null where all of it does. */
export const dissolvedPartG = (sugarG: number, waterG: number): number | null => {
  const couldG = dissolvableSugarG(waterG)
  return couldG < sugarG ? couldG : null
}
