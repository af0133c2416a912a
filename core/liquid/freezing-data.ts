import type { Point } from './monotone-cubic.ts'

/**
 * First ice of ethanol and water: % ethanol by mass, °C.
 * 0–10 and 68: CRC Handbook, 102nd ed., "Concentrative properties of aqueous solutions".
 * 11 and 21–60: Å. Melinder, Properties of Secondary Working Fluids (IIR 2010), by way of CoolProp's SecCool files.
 * 16: CRC again. Melinder's −7.66 there bends away from its own neighbours (0.53 K per % before it, 0.84 after), the
 *   other tables are colder; the two differ by 0.35 K.
 * 73.5–100: engineeringtoolbox.com, whole degrees at 80, 90 and 100 % vol. Weak, and of no use in a kitchen.
 */
export const ETHANOL_FREEZES: readonly Point[] = [
  [0, 0],
  [0.5, -0.2],
  [1, -0.4],
  [2, -0.81],
  [3, -1.23],
  [4, -1.65],
  [5, -2.09],
  [6, -2.54],
  [8, -3.47],
  [10, -4.47],
  [11, -5.005],
  [16, -8.01],
  [21, -11.842],
  [26, -16.583],
  [31, -21.338],
  [36, -25.878],
  [41, -30.18],
  [46, -34.317],
  [51, -38.343],
  [56, -42.188],
  [60, -44.937],
  [68, -49.52],
  [73.5, -59],
  [85.7, -73],
  [100, -115],
]

/** Grams of sucrose, in steps of 3 from 0, to 100 g of water. */
export const SUCROSE_STEP_G = 3

/**
 * Depression of first ice, K, at 0, 3, 6 … 180 g sucrose to 100 g water.
 * Source: Pickering's curve (1891) as tabulated by Leighton, J. Dairy Sci. 10 (1927), used in ice-cream technology.
 */
export const SUCROSE_DEPRESSES: readonly number[] = [
  0, 0.18, 0.35, 0.53, 0.72, 0.9, 1.1, 1.29, 1.47, 1.67, 1.86, 2.03, 2.21, 2.4, 2.6, 2.78, 2.99, 3.2, 3.42, 3.63, 3.85,
  4.1, 4.33, 4.54, 4.77, 5.0, 5.26, 5.53, 5.77, 5.99, 6.23, 6.5, 6.8, 7.04, 7.32, 7.56, 7.8, 8.04, 8.33, 8.62, 8.92,
  9.19, 9.45, 9.71, 9.96, 10.22, 10.47, 10.72, 10.97, 11.19, 11.41, 11.63, 11.88, 12.14, 12.4, 12.67, 12.88, 13.08,
  13.28, 13.48, 13.68,
]
