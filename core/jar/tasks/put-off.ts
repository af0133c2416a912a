import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import { dayNumber } from '../../quantity/time/day-number.ts'
import type { HappeningEntry } from '../entry/entry.ts'
import type { Of, Story } from '../state/jar-state.ts'
import { enteredDay } from './duty.ts'
import type { ReminderDays } from './reminder-days.ts'

/** Until when the maker wants to hear nothing of a jar. */
export interface PutOff {
  readonly untilDay: number
  /** The instant of that day; null: its morning. */
  readonly untilMs: number | null
  /** The entry that says so. */
  readonly seq: number
}

/** The last putting off counts; null where there is none, or where it is to no later day or hour. */
export function putOffOf({ happened }: Story): PutOff | null {
  const entry = happened.findLast(({ kind }) => kind === 'put_off') as Of<'put_off'> | undefined
  if (entry === undefined) return null
  const { untilMs, seq, enteredMs } = entry
  const untilDay = dayNumber(entry.untilDay)
  const isLater = untilMs === null ? untilDay > enteredDay(entry) : untilMs > enteredMs
  return isLater ? { untilDay, untilMs, seq } : null
}

/** Whether an entry put something off that holds no longer: only the last does, until its day or its hour has come. */
export function isOverPutOff(
  entry: HappeningEntry,
  happened: readonly HappeningEntry[],
  { today, nowMs }: { readonly today: IsoDay; readonly nowMs: number },
): boolean {
  if (entry.kind !== 'put_off') return false
  const last = happened.findLast(({ kind }) => kind === 'put_off')
  return entry !== last || (entry.untilMs === null ? entry.untilDay <= today : entry.untilMs <= nowMs)
}

/**
 * What was said or would have been by the day is said on it, once: whoever puts a thing off wants to be asked again. That a
 * jar is ready is news and no question, so it only waits.
 */
export function postponed(asked: ReminderDays, putOff: PutOff): ReminderDays {
  const { untilDay, untilMs } = putOff
  if (![asked.fromDay, ...asked.days].some((day) => day <= untilDay)) return asked
  if (asked.kind !== 'ready') {
    return atItsHour({ ...asked, days: [untilDay, ...asked.days.filter((day) => day > untilDay)] }, putOff)
  }
  return untilMs === null ? { ...asked, heldUntilDay: untilDay } : { ...asked, heldUntilMs: untilMs }
}

/** The reminder of the day is said at the hour it was put off to, whether or not one was said that morning. */
export function atItsHour(asked: ReminderDays, { untilDay, untilMs, seq }: PutOff): ReminderDays {
  if (untilMs === null) return asked
  const held = { ...asked, heldUntilMs: untilMs }
  const isLaterStill = asked.hour?.day === untilDay && asked.hour.ms >= untilMs
  if (asked.days[0] !== untilDay || isLaterStill) return held
  return { ...held, hour: { day: untilDay, ms: untilMs }, again: { day: untilDay, seq } }
}

/** A pause holds reminders back; only the last of them is said, at its end. */
export function paused(asked: ReminderDays, untilDay: number): ReminderDays {
  const held = asked.days.filter((day) => day <= untilDay).length
  if (held === 0) return asked
  return { ...asked, days: asked.days.slice(held - 1), heldUntilDay: Math.max(untilDay, asked.heldUntilDay) }
}
