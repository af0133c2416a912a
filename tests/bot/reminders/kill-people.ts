import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt, dayNumberAt } from '../../../core/quantity/time/zone.ts'
import type { Person } from '../../../store/person.ts'
import { DAY_MS, happened, jarOf, ZONE } from './people.ts'

export const PEOPLE = ['12345678901234567', '12345678901234568', '12345678901234569']

const idOn = (dayNumber: number): string => `d${dayNumber}`.slice(0, 1) + String(dayNumber % 10_000).padStart(4, '0')
const inDays = (nowMs: number, days: number): string => isoDay(dayAt(ZONE, nowMs + days * DAY_MS))

/** Every third day a new jar, every second day all are shaken, and jars of forty days are discarded; once an evening. */
export function liveOneEvening(person: Person, nowMs: number): Person | null {
  const today = dayNumberAt(ZONE, nowMs)
  let now = person
  if (today % 3 === 0 && !person.jars.some(({ id }) => id === idOn(today))) {
    const plan = { strainFrom: inDays(nowMs, 2), strainBy: inDays(nowMs, 9) }
    now = { ...now, jars: [...now.jars, jarOf({ name: idOn(today), startedMs: nowMs, plan })] }
  }
  for (const { id, entries } of now.jars) {
    const [started, last] = [entries[0]!, entries.at(-1)!]
    if (last.kind === 'discarded' || last.day === inDays(nowMs, 0)) continue
    if (nowMs - started.atMs > 40 * DAY_MS) now = happened(now, id, nowMs, { kind: 'discarded' })
    else if (today % 2 === 0) now = happened(now, id, nowMs, { kind: 'shaken' })
  }
  return now === person ? null : now
}
