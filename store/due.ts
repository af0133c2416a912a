import type { JarEntry } from '../core/jar/entry/entry.ts'
import { allDuties } from '../core/jar/tasks/duties.ts'
import type { Duty, DutySettings } from '../core/jar/tasks/duty.ts'
import type { Person, Settings } from './person.ts'
import { believed, saidBy } from './told-ahead.ts'

/** A reminder and the jar it is about. */
export interface Due {
  readonly jarId: string
  readonly duty: Duty
}

export const dutySettings = ({ zone, atMinutes, shake, pausedUntil }: Settings, assumedZone: string): DutySettings => ({
  zone: zone ?? assumedZone,
  atMinutes,
  shake,
  pausedUntil,
})

/** By no clock: whatever was said or entered is believed. */
const ANY_TIME_MS = Number.POSITIVE_INFINITY

interface Asked {
  readonly wanted: DutySettings
  readonly duties: readonly Duty[]
}

const lastAsked = new WeakMap<readonly JarEntry[], Asked>()

/** As `allDuties`; a change of a person leaves most of the jars as they were, and nearly always the settings. */
function dutiesOf(entries: readonly JarEntry[], wanted: DutySettings): readonly Duty[] {
  const last = lastAsked.get(entries)
  const isSame =
    last !== undefined &&
    Object.entries(wanted).every(([key, value]) => last.wanted[key as keyof DutySettings] === value)
  if (isSame) return last.duties
  const duties = allDuties(entries, wanted)
  lastAsked.set(entries, { wanted, duties })
  return duties
}

/**
 * Reminders that were neither said nor are on their way, in the order in which they fall due. What was entered ahead of
 * `nowMs`, by a clock that was, keeps none quiet.
 */
export function untold(
  { settings, jars, nudges }: Person,
  assumedZone: string,
  nowMs: number = ANY_TIME_MS,
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

/** When to look at a person again: the next reminder to make or to try; null where there is none. */
export function nextDueMs(person: Person, assumedZone: string, nowMs: number = ANY_TIME_MS): number | null {
  const tries = person.nudges.filter(({ state }) => state !== 'kept').map(({ nextMs }) => nextMs)
  const first = untold(person, assumedZone, nowMs)[0]?.duty.dueMs
  const times = first === undefined ? tries : [first, ...tries]
  return times.length === 0 ? null : Math.min(...times)
}
