import type { Bottles } from './parse-bottles.ts'

type Wanted = Pick<Bottles, 'count' | 'volumeMl'>

export interface Filled {
  readonly bottles: readonly { readonly count: number; readonly volumeMl: number }[]
  readonly leftoverMl: number
  /** How many of the bottles asked for stay empty. */
  readonly empty: number
}

/** A bottle that lacks less than this is full: the last digits of a solve. */
const ROUNDING_SHARE = 1e-9

/** Full bottles only, in the order given; the rest is left over. */
export function fillBottles(volumeMl: number, wanted: readonly Wanted[]): Filled {
  let leftMl = volumeMl
  const bottles = wanted.map(({ count, volumeMl: sizeMl }) => {
    const could = Math.floor((leftMl / sizeMl) * (1 + ROUNDING_SHARE) + ROUNDING_SHARE)
    const filled = Math.min(could, count ?? could)
    leftMl = Math.max(0, leftMl - filled * sizeMl)
    return { count: filled, volumeMl: sizeMl }
  })
  const asked = wanted.reduce((sum, { count }, index) => sum + (count ?? bottles[index]!.count), 0)
  const filled = bottles.reduce((sum, { count }) => sum + count, 0)
  return { bottles, leftoverMl: leftMl < volumeMl * ROUNDING_SHARE ? 0 : leftMl, empty: asked - filled }
}

/** What all of them hold, ml; null where a count is missing. */
export const heldMl = (wanted: readonly Wanted[]): number | null =>
  wanted.some(({ count }) => count === null)
    ? null
    : wanted.reduce((sum, { count, volumeMl }) => sum + count! * volumeMl, 0)
