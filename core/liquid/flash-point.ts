import { type Liquid, sugarFreeAbvPercent, sugarFreeMassFraction } from './liquid.ts'

/** % ethanol, on a basis the two sources dispute; closed-cup flash point, °C. */
const TABLE = [
  [5, 62],
  [10, 49],
  [20, 36],
  [30, 29],
  [40, 26],
  [50, 24],
  [60, 22],
  [70, 21],
  [80, 20],
  [90, 17],
  [96, 17],
] as const

const LEAST_ABV_PERCENT = 5

/**
 * From this strength on flame is warned of, % vol: with the weakest spirit that is widely sold, so that nothing of “40 %” is
 * left out for a tenth. Common caution, no source: weaker liquid lights only when warm.
 */
export const STRONG_PERCENT = 37.5

export interface FlashPoint {
  /** The one to warn with. */
  readonly lowC: number
  readonly highC: number
}

/** In a straight line between rows; the first rows' line is carried on below 5 %. */
const read = (percent: number): number => {
  if (percent >= 96) return 17
  const after = Math.max(
    1,
    TABLE.findIndex(([rowPercent]) => rowPercent >= percent),
  )
  const [[x0, y0], [x1, y1]] = [TABLE[after - 1]!, TABLE[after]!]
  return y0 + ((y1 - y0) * (percent - x0)) / (x1 - x0)
}

/**
 * Temperature, °C, from which a flame lights the vapour over a liquid; null below 5 % vol, where the table ends.
 * Two sources print the same figures, one as % by volume, one as % by mass: `lowC` reads them by volume, `highC` by
 * mass, so the truth is one of the two. Sugar is left out: it takes the place of neither and is not measured.
 * Valid from 5 % vol of the strength without sugar. Error: rounded guidance, 1 to 2 K beside the disputed basis.
 * Source: engineeringtoolbox.com, "Ethanol freeze protected water solutions" (by weight); encyclopaedia article on
 * alcohol flammability (by volume).
 */
export const flashPointC = (liquid: Liquid): FlashPoint | null => {
  const byVolumePercent = sugarFreeAbvPercent(liquid)
  if (byVolumePercent < LEAST_ABV_PERCENT - 1e-9) return null
  return { lowC: read(byVolumePercent), highC: read(100 * sugarFreeMassFraction(liquid)) }
}
