import { ETHANOL_FREEZES, SUCROSE_DEPRESSES, SUCROSE_STEP_G } from './freezing-data.ts'
import { abvPercent, type Liquid, sugarFreeMassFraction, sugarGPerL } from './liquid.ts'
import { monotoneCubic } from './monotone-cubic.ts'

const ethanolFreezesAtC = monotoneCubic(ETHANOL_FREEZES)

const sucroseTable = monotoneCubic(SUCROSE_DEPRESSES.map((depressionK, i) => [i * SUCROSE_STEP_G, depressionK]))
const TABLE_END_G = (SUCROSE_DEPRESSES.length - 1) * SUCROSE_STEP_G
/** The mean slope of the table's last 30 g; single steps there are rounded to 0.2 to 0.27 K. */
const LAST_SLOPE_K_PER_G = (SUCROSE_DEPRESSES.at(-1)! - SUCROSE_DEPRESSES.at(-11)!) / 30
/** Far beyond any syrup; keeps the number finite where hardly any water is left. */
const MOST_SUGAR_G = 10_000

/**
 * Depression of first ice by sucrose in water, K.
 * @param sugarGPer100GWater - valid 0 to 180; beyond, extended in a straight line (the dilute law would bend further down).
 * Error: 0.1 K against the CRC values to 67 g.
 * Source: Leighton 1927, see `freezing-data.ts`.
 */
export const sugarDepressionK = (sugarGPer100GWater: number): number =>
  sucroseTable(sugarGPer100GWater) + LAST_SLOPE_K_PER_G * Math.max(0, sugarGPer100GWater - TABLE_END_G)

/**
 * Temperature, °C, at which the first ice appears on slow cooling: "about", never a guarantee.
 * Both solutes are referred to the water present: the ethanol's own freezing point with the sugar left out, less the
 * depression of as much sucrose at its grams to 100 g of water, times what a gram of its kinds of sugar does beside one of
 * sucrose (glucose and fructose 1.82, measured from 10 to 28 % by mass). Other models of the mixture lie within 1.5 K.
 * Error: `freezingPlusMinusC`; no published measurement of a sweet liqueur was found. Ethanol alone 0.2 K at 11–60 % by
 * mass. Below −115 °C, or without any water, the number means only "never".
 * Source: tables in `freezing-data.ts`; the sum is within 0.4 K of the product of water activities (Ross 1975).
 */
export const freezesAtC = (liquid: Liquid): number => {
  const solidsG = liquid.sugarG + liquid.extractG
  const solidsGPer100GWater = solidsG === 0 ? 0 : Math.min(MOST_SUGAR_G, (100 * solidsG) / liquid.waterG)
  const bySolidsK = besideSucrose(liquid) * sugarDepressionK(solidsGPer100GWater)
  return ethanolFreezesAtC(100 * sugarFreeMassFraction(liquid)) - bySolidsK
}

/**
 * What a gram of glucose or fructose does to the freezing point of water beside a gram of sucrose: the mean of both from 10 to 28 %
 * by mass; by molar masses it would be 1.90. Error: 0.05. Source: CRC Handbook, 102nd ed., "Concentrative Properties of Aqueous
 * Solutions", ratios at equal mass per cent 1.77 to 1.86.
 */
export const HEXOSE_BESIDE_SUCROSE = 1.82

/** What a gram of what is dissolved does to the freezing point beside a gram of sucrose. */
export const besideSucrose = ({ sugarG, extractG, sucroseEquivalentG }: Liquid): number =>
  sugarG + extractG === 0 ? 1 : sucroseEquivalentG / (sugarG + extractG)

/** How far the first ice lies below that of pure water, K. */
export const depressionK = (liquid: Liquid): number => -freezesAtC(liquid)

/** How far two good tables of ethanol alone lie apart, K. */
const ETHANOL_PLUS_MINUS_K = 0.4
/** From this sugar on, g/L, the whole spread of the models is to be reckoned with. */
const FULL_SPREAD_G_PER_L = 200

/**
 * Half interval of `freezesAtC`, K: 0.4 without sugar; at 200 g/L 1.5 up to 20 % vol, rising to 3 at 30 % vol or 300 g/L.
 * Below 200 g/L it shrinks with the sugar, because only what sugar adds is a model; of sugars that lower it further than sucrose
 * it is larger in the same measure.
 * Source: our estimate from the spread of four models (additive, Ross, ZSR, ice-cream factors); without sugar Melinder and the
 * CRC Handbook differ by 0.4 K at most.
 */
export const freezingPlusMinusC = (liquid: Liquid): number => {
  const sweetness = sugarGPerL(liquid)
  const beyond = Math.max((abvPercent(liquid) - 20) / 10, (sweetness - FULL_SPREAD_G_PER_L) / 100)
  const spreadK = (1.5 + 1.5 * Math.min(1, Math.max(0, beyond))) * Math.max(1, besideSucrose(liquid))
  return Math.max(ETHANOL_PLUS_MINUS_K, spreadK * Math.min(1, sweetness / FULL_SPREAD_G_PER_L))
}
