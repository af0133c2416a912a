import { allDuties, isOwed, possibleDuties } from '../core/jar/tasks/duties.ts'
import type { Duty, DutySettings } from '../core/jar/tasks/duty.ts'
import type { Person, Settings } from './person.ts'
import { believed, saidBy } from './told-ahead.ts'

/** A reminder and the jar it is about. */
export interface Due {
  readonly jarId: string
  readonly duty: Duty
}

export const dutySettings = (
  { zone, atMinutes, shake, drink = 'on', pausedUntil }: Settings,
  assumedZone: string,
): DutySettings => ({
  zone: zone ?? assumedZone,
  atMinutes,
  shake,
  drink,
  pausedUntil,
})

/** By no clock: whatever was said or entered is believed. */
const ANY_TIME_MS = Number.POSITIVE_INFINITY

/**
 * Reminders that were neither said nor are on their way, in the order in which they fall due. What was said
 * or entered by a clock that ran ahead of `nowMs` keeps none quiet.
 */
export const untold = (person: Person, assumedZone: string, nowMs: number = ANY_TIME_MS): readonly Due[] =>
  untoldOf(person, assumedZone, nowMs, allDuties)

function untoldOf(
  { settings, jars, nudges }: Person,
  assumedZone: string,
  nowMs: number,
  dutiesOf: typeof allDuties,
): readonly Due[] {
  const wanted = dutySettings(settings, assumedZone)
  const onTheirWay = new Set(nudges.flatMap((nudge) => nudge.duties.map(({ jarId, key }) => `${jarId} ${key}`)))
  return jars
    .flatMap(({ id, entries, ...told }) => {
      const said = saidBy(told, nowMs)
      return dutiesOf(believed(entries, nowMs), wanted)
        .filter(({ key }) => !said.has(key) && !onTheirWay.has(`${id} ${key}`))
        .map((duty) => ({ jarId: id, duty }))
    })
    .sort((one, other) => one.duty.dueMs - other.duty.dueMs)
}

/** When to look at a person again: when the next reminder is to be made or tried; null where there is none. */
export function nextDueMs(person: Person, assumedZone: string, nowMs: number = ANY_TIME_MS): number | null {
  const tries = person.nudges.filter(({ state }) => state !== 'kept').map(({ nextMs }) => nextMs)
  const entriesOf = new Map(person.jars.map(({ id, entries }) => [id, believed(entries, nowMs)]))
  const first = untoldOf(person, assumedZone, nowMs, possibleDuties).find(({ jarId, duty }) =>
    isOwed(entriesOf.get(jarId)!, duty),
  )?.duty.dueMs
  const times = first === undefined ? tries : [first, ...tries]
  return times.length === 0 ? null : Math.min(...times)
}
