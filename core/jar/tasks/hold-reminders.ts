import { isNews } from './duty.ts'
import type { PutOff } from './put-off.ts'
import type { ReminderDays } from './reminder-days.ts'

/**
 * What was said or would have been by the day is said on it, once: whoever puts a thing off wants to be asked again. That a
 * jar is ready is news and no question, so it only waits.
 */
export function postponed(asked: ReminderDays, putOff: PutOff): ReminderDays {
  const { untilDay, untilMs } = putOff
  if (![asked.fromDay, ...asked.days].some((day) => day <= untilDay)) return asked
  if (!isNews(asked.kind)) {
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
