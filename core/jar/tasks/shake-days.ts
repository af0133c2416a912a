import { dayNumber } from '../../quantity/time/day-number.ts'
import type { Entry } from '../entry/entry.ts'
import type { JarState } from '../state/jar-state.ts'
import { enteredDay, type ShakeRhythm } from './duty.ts'
import type { PutOff } from './put-off.ts'

/** Reminders to shake that go unanswered before they stop. */
const MOST_UNANSWERED = 7
/** A jar older than this is shaken once a week. Common practice, no source. */
const YOUNG_DAYS = 30
const WEEK_DAYS = 7

/** The next day of the rhythm after a day of it. */
export type NextShake = (day: number) => number

/** Null where the jar is not to be shaken. */
export function nextShakeOf({ started }: JarState, shake: ShakeRhythm): NextShake | null {
  if (shake === 'off' || started.days.isHours) return null
  const startDay = dayNumber(started.day)
  const young = shake === 'daily' ? 1 : 2
  return (day) => day + (day + young - startDay > YOUNG_DAYS ? WEEK_DAYS : young)
}

/** The day of the last shake, or of the start. */
export const lastShakenDay = ({ happened, started }: JarState): number =>
  dayNumber(
    happened.reduce((day, entry) => (entry.kind === 'shaken' && entry.day > day ? entry.day : day), started.day),
  )

/** The last day of the rhythm that is not after `limit`, or `day` itself where that is. */
function lastBy(day: number, limit: number, next: NextShake): number {
  let last = day
  while (next(last) <= limit) {
    const following = next(last)
    const isWeekly = following - last === WEEK_DAYS
    last = isWeekly ? following + WEEK_DAYS * Math.floor((limit - following) / WEEK_DAYS) : following
  }
  return last
}

/** Whatever was entered last: reminders to shake begin anew after it. */
export const lastAnswer = ({ happened }: JarState): Entry =>
  happened.reduce((last, entry) => (entry.enteredMs > last.enteredMs ? entry : last))

/**
 * The days of the rhythm since the last shake that come after the last answer, seven at the most. What was put off begins
 * anew on the day it was put off to, what was entered late on the morning after; of the days in a pause only the last is
 * left, and the seven are counted from it.
 */
export function shakeDays(
  story: JarState,
  next: NextShake,
  putOff: PutOff | null,
  pausedUntilDay: number,
): readonly number[] {
  const due = next(lastShakenDay(story))
  const isAnew = putOff !== null && due <= putOff.untilDay
  const first = isAnew ? putOff.untilDay : due
  const last = lastAnswer(story)
  const answered = enteredDay(last)
  const isToCome = isAnew && putOff.untilMs !== null && putOff.untilMs > last.enteredMs
  const afterAnswer = () => (last === story.started ? answered + 1 : next(lastBy(first, answered, next)))
  const unanswered = first > answered || isToCome ? first : afterAnswer()
  const days = [unanswered > pausedUntilDay ? unanswered : lastBy(unanswered, pausedUntilDay, next)]
  while (days.length < MOST_UNANSWERED) days.push(next(days.at(-1)!))
  return days
}
