import { once } from '../../once.ts'
import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import type { TroubleTold } from '../entry/told.ts'
import type { JarState } from './jar-state.ts'

/** What a jar was told of, and nobody has taken back. */
export interface StandingTrouble extends TroubleTold {
  readonly day: IsoDay
  /** The entry that tells it. */
  readonly seq: number
}

const GRAVITY: readonly TroubleTold['verdict'][] = ['throw_away', 'hold', 'ask']

/** Each symptom as it was told last, the worst first; empty where nothing stands. */
export const standingTroubles = once(({ happened }: JarState): readonly StandingTrouble[] => {
  const standing = new Map<string, StandingTrouble>()
  for (const entry of happened) {
    if (entry.kind !== 'noted' && entry.kind !== 'tasted') continue
    const { trouble, day, seq } = entry
    for (const symptom of (entry.kind === 'noted' ? entry.settled : undefined) ?? []) standing.delete(symptom)
    if (trouble === undefined) continue
    standing.delete(trouble.symptom)
    standing.set(trouble.symptom, { ...trouble, day, seq })
  }
  return [...standing.values()]
    .toReversed()
    .toSorted((one, other) => GRAVITY.indexOf(one.verdict) - GRAVITY.indexOf(other.verdict))
})
