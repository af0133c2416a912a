import { CUP_ML, IMPERIAL_FLUID_OUNCE_ML, IMPERIAL_PINT_ML, US_FLUID_OUNCE_ML } from '../customary.ts'

/** Sizes that are sold by their own name, the largest first, ml. */
const SIZES = [
  ['quarts', 4 * CUP_ML],
  ['pints', 2 * CUP_ML],
  ['imp pints', IMPERIAL_PINT_ML],
  ['fl oz', US_FLUID_OUNCE_ML],
  ['imp fl oz', IMPERIAL_FLUID_OUNCE_ML],
] as const

/** As far as a size that was written down may be off, ml. */
const SIZE_TOLERANCE_ML = 0.006

const isWhole = (count: number, unitMl: number): boolean =>
  count >= 1 && Math.abs(count - Math.round(count)) * unitMl <= SIZE_TOLERANCE_ML

/** `1 pint`, `12 fl oz`: a size that somebody told so, since no millilitre is that odd; null of any other. */
export function sizeTold(volumeMl: number): string | null {
  if (isWhole(volumeMl, 1)) return null
  const found = SIZES.find(([, unitMl]) => isWhole(volumeMl / unitMl, unitMl))
  if (found === undefined) return null
  const [name, unitMl] = found
  const count = Math.round(volumeMl / unitMl)
  return `${count} ${count === 1 ? name.replace(/s$/, '') : name}`
}

/** Jars as they are sold in the United States, the smallest first, ml (common practice, no source). */
const US_JARS = [
  [CUP_ML, 'half-pint'],
  [2 * CUP_ML, 'pint'],
  [4 * CUP_ML, 'quart'],
  [8 * CUP_ML, 'half-gallon'],
  [16 * CUP_ML, 'gallon'],
] as const

const US_GALLON = 16 * CUP_ML

/** Jars of either kind that differ by less take the same: a quart and a litre. */
const AS_LARGE_SHARE = 0.06

/** `half-gallon`, `3-gallon`: the least jar of a US shop that takes as much as one of so many millilitres. */
export function usJarTold(volumeMl: number): string {
  const neededMl = volumeMl * (1 - AS_LARGE_SHARE)
  const found = US_JARS.find(([jarMl]) => jarMl >= neededMl)
  return found === undefined ? `${Math.ceil(neededMl / US_GALLON)}-gallon` : found[1]
}
