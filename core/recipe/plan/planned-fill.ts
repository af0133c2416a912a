import type { Bottles } from './parse-bottles.ts'

type Planned = Pick<Bottles, 'count' | 'volumeMl'>

/** Of so many bottles that were planned as many are filled as there is drink for. */
export interface PlannedFill {
  readonly filled: number
  readonly planned: number
  /** Null where they are of several sizes. */
  readonly sizeMl: number | null
  /** What lacks is less than a jug can tell: all of them, as good as full. */
  readonly isNearly: boolean
  /** What there would have to be more, ml. */
  readonly lackingMl: number
}

/** What a jug can tell, as a share. Common practice, no source. */
const JUG_SHARE = 0.02

/** How a drink falls short of the bottles that were planned for it; null where it fills them, or where nobody counted any. */
export function plannedFill(volumeMl: number, wanted: readonly Planned[]): PlannedFill | null {
  const planned = wanted.reduce((sum, { count }) => sum + (count ?? 0), 0)
  const wholeMl = wanted.reduce((sum, { count, volumeMl: sizeMl }) => sum + (count ?? 0) * sizeMl, 0)
  if (planned === 0 || wanted.some(({ count }) => count === null) || volumeMl >= wholeMl) return null
  const isNearly = volumeMl >= wholeMl * (1 - JUG_SHARE)
  let leftMl = volumeMl
  let filled = 0
  for (const { count, volumeMl: sizeMl } of wanted) {
    const full = Math.min(count!, Math.floor(leftMl / sizeMl))
    leftMl -= full * sizeMl
    filled += full
  }
  const sizes = new Set(wanted.map(({ volumeMl: sizeMl }) => sizeMl))
  return {
    filled: isNearly ? planned : filled,
    planned,
    sizeMl: sizes.size === 1 ? wanted[0]!.volumeMl : null,
    isNearly,
    lackingMl: wholeMl - volumeMl,
  }
}
