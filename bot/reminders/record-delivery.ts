import type { Nudge, Person, SentNudge } from '../../store/person.ts'
import { tell } from './mark-told.ts'
import { isGivenUp, pauseMs, SENDING_MS } from './quiet-pause.ts'

const withNudge = (person: Person, id: string, change: (nudge: Nudge) => Nudge | null): Person => ({
  ...person,
  nudges: person.nudges.flatMap((nudge) => (nudge.id === id ? (change(nudge) ?? []) : [nudge])),
})

/** Nudges kept to be shown anew: a week's, of one a day. */
const MOST_SENT = 7

/**
 * It arrived: its reminders are said, and it is on its way no longer.
 *
 * @param sent - what it is shown anew from; null where it cannot be
 */
export const recordSent = (person: Person, { id }: Nudge, nowMs: number, sent: SentNudge | null): Person => {
  const said = person.nudges.filter((nudge) => nudge.id === id).flatMap(({ duties }) => duties)
  const told = withNudge(tell(person, said, nowMs), id, () => null)
  if (sent === null) return told
  const before = (person.sentNudges ?? []).filter((each) => each.id !== id)
  return { ...told, sentNudges: [...before, sent].slice(-MOST_SENT) }
}

/**
 * It did not arrive, or nobody knows (`isUnsure`): then it is looked for before the next attempt, else just tried again,
 * after pauses that grow; after a day it is kept.
 */
export const recordFailed = (person: Person, { id }: Nudge, isUnsure: boolean, nowMs: number): Person =>
  withNudge(person, id, (nudge) => {
    if (isGivenUp(nudge.madeMs, nowMs)) return { ...nudge, state: 'kept' }
    const pause = pauseMs(nudge.attempts)
    return isUnsure
      ? { ...nudge, state: 'sending', nextMs: nowMs + Math.max(SENDING_MS, pause) }
      : { ...nudge, state: 'waiting', nextMs: nowMs + pause }
  })

/** Its place will never take it, and there is no other. */
export const recordKept = (person: Person, { id }: Nudge): Person =>
  withNudge(person, id, (nudge) => ({ ...nudge, state: 'kept' }))

/** Its place will never take it: the next one is tried. */
export const recordMoved = (person: Person, { id }: Nudge, place: Nudge['place']): Person =>
  withNudge(person, id, (nudge) => ({ ...nudge, place }))
