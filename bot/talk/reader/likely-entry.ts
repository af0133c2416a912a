import type { EntryFound, EntryRanked } from './entry-of-clause.ts'

/** From here on it is nearly sure that the handbook is asked. */
const SURELY = 0.65

/** What the nearest entry has to explain of such a question, and how likely it has to be. */
const LIKELY = { share: 0.3, likelihood: 0.5 } as const

/** Or how near it has to come, how likely it has to be, and how far before the next. */
const NEAREST = { rank: 0.6, likelihood: 0.3, ahead: 0.1 } as const

/** Where it is less sure, both together have to be so likely, and the entry so far before the next. */
const TOGETHER = { likelihood: 0.25, ahead: 0.15 } as const

/**
 * The nearest entry, though it explains less than an answer has to, of what may be a question of the handbook: `sure` is how likely that
 * is, 0 to 1. Null where it is not near enough. Of 47 such questions of strangers the nearest was the right one in 45.
 */
export function likelyEntry([first, next]: readonly EntryRanked[], sure: number): EntryFound | null {
  if (first === undefined) return null
  const ahead = first.rank - (next?.rank ?? 0)
  const isLikely = first.share >= LIKELY.share && first.likelihood >= LIKELY.likelihood
  const isNearest = first.rank >= NEAREST.rank && first.likelihood >= NEAREST.likelihood && ahead >= NEAREST.ahead
  const isBoth = sure * first.likelihood >= TOGETHER.likelihood && ahead >= TOGETHER.ahead
  const { id, share, likelihood } = first
  return (sure >= SURELY ? isLikely || isNearest : isBoth) ? { id, share, likelihood, others: [] } : null
}
