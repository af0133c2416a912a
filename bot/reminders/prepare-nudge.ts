import { createHash } from 'node:crypto'
import { untold } from '../../store/due.ts'
import type { Nudge, Person, Place } from '../../store/person.ts'
import type { NudgeFound, Surface } from './delivery.ts'
import { tell } from './mark-told.ts'
import { isSamePlace, placesFrom } from './places-from.ts'
import { hasCome, SENDING_MS } from './quiet-pause.ts'
import { SOON_MS, sortDuties } from './still-wanted.ts'

const ID_LENGTH = 24

/** The same for the same person, reminders and instant; 24 digits and letters from a to f. */
const nudgeId = (userId: string, duties: Nudge['duties'], madeMs: number): string =>
  createHash('sha256')
    .update(JSON.stringify([userId, madeMs, duties.map(({ jarId, key }) => [jarId, key])]))
    .digest('hex')
    .slice(0, ID_LENGTH)

export interface Now {
  readonly nowMs: number
  readonly assumedZone: string
}

/** What became of nudges whose sending was cut off, by their ids. */
export type Verdicts = ReadonlyMap<string, NudgeFound>

export interface Intent {
  readonly person: Person
  /** The nudge to be sent now; null where there is none. */
  readonly nudge: Nudge | null
}

type Places = Pick<Surface, 'placeOf' | 'after'>

/** Nudges that were being sent when something cut it off: to be looked for. */
export const cutOff = ({ nudges }: Person, nowMs: number): readonly Nudge[] =>
  nudges.filter(({ state, nextMs }) => state === 'sending' && hasCome(nextMs, nowMs))

/** The place it fell back to, as long as the choice still leads there; else the choice. */
const placeAgain = (tried: Place, chosen: Place, { after }: Places): Place =>
  placesFrom(chosen, after).find((place) => isSamePlace(place, tried)) ?? chosen

const distinct = (duties: Nudge['duties']): Nudge['duties'] => [
  ...new Map(duties.map((duty) => [`${duty.jarId} ${duty.key}`, duty])).values(),
]

const dutiesOf = (nudges: readonly Nudge[]): Nudge['duties'] => nudges.flatMap(({ duties }) => duties)

/** The nudge that carries these reminders: one that is tried again, or a new one. */
function nudgeOf(
  userId: string,
  duties: Nudge['duties'],
  again: Nudge | undefined,
  place: Place,
  nowMs: number,
): Nudge {
  return {
    id: again?.id ?? nudgeId(userId, duties, nowMs),
    place,
    duties,
    state: 'sending',
    madeMs: again?.madeMs ?? nowMs,
    attempts: (again?.attempts ?? 0) + 1,
    nextMs: nowMs + SENDING_MS,
  }
}

/**
 * Everything that is to be said to a person now, in one nudge about to be sent: what has fallen due, and whatever earlier
 * nudges did not get across. Where one is only tried again it keeps its id. Null where there is nothing to change.
 */
export function intend(userId: string, person: Person, verdicts: Verdicts, now: Now, places: Places): Intent | null {
  const { nowMs, assumedZone } = now
  const chosen = places.placeOf(userId, person.settings.place)
  if (chosen === null) return null
  const judged = (found: NudgeFound) => person.nudges.filter(({ id }) => verdicts.get(id) === found)
  const there = judged('there')
  const onTheirWay = person.nudges.filter(({ id, state }) => state === 'sending' && !verdicts.has(id))
  const unsaid = person.nudges.filter((nudge) => !there.includes(nudge) && !onTheirWay.includes(nudge))
  const again = unsaid.filter(
    ({ id, state, nextMs }) => verdicts.has(id) || (state === 'waiting' && hasCome(nextMs, nowMs)),
  )
  const soon = untold(person, assumedZone, nowMs).filter(({ duty }) => duty.dueMs <= nowMs + SOON_MS)
  const fresh = soon.filter(({ duty }) => duty.dueMs <= nowMs)
  const known = tell(person, dutiesOf(there), nowMs)
  if (fresh.length === 0 && again.length === 0) {
    return there.length === 0 ? null : { person: { ...known, nudges: [...onTheirWay, ...unsaid] }, nudge: null }
  }
  const due = (fresh.length === 0 ? [] : soon).map(({ jarId, duty: { kind, key } }) => ({ jarId, kind, key }))
  const said = distinct([...dutiesOf(unsaid), ...due])
  const { wanted, over, lapsed } = sortDuties(said, person, assumedZone, nowMs)
  // What is over and was surely not said is forgotten, so that it comes after all if it is wanted again.
  const maybeSeen = dutiesOf(judged('unknown'))
  const isMaybeSeen = (one: { jarId: string; key: string }): boolean =>
    maybeSeen.some(({ jarId, key }) => jarId === one.jarId && key === one.key)
  const told = tell(known, [...over.filter(isMaybeSeen), ...lapsed], nowMs)
  if (wanted.length === 0) return { person: { ...told, nudges: onTheirWay }, nudge: null }
  const retried = fresh.length === 0 ? again[0] : undefined
  const place = retried === undefined ? chosen : placeAgain(retried.place, chosen, places)
  const nudge = nudgeOf(userId, wanted, retried, place, nowMs)
  return { person: { ...told, nudges: [...onTheirWay, nudge] }, nudge }
}
