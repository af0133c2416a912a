import { dayNumber } from '../../quantity/time/day-number.ts'
import type { Of, Story } from '../state/jar-state.ts'
import type { Series } from './reminder-days.ts'
import { enteredDay } from './reminder-days.ts'

/** Until when the maker wants to hear nothing of a jar. */
export interface PutOff {
  readonly untilDay: number
  /** The instant of that day; null: its morning. */
  readonly untilMs: number | null
  /** The entry that says so. */
  readonly seq: number
}

/** As last said; null where nothing was put off, or to no later day or hour. */
export function putOffOf({ happened }: Story): PutOff | null {
  const entry = happened.findLast(({ kind }) => kind === 'put_off') as Of<'put_off'> | undefined
  if (entry === undefined) return null
  const { untilMs, seq, enteredMs } = entry
  const untilDay = dayNumber(entry.untilDay)
  const isLater = untilMs === null ? untilDay > enteredDay(entry) : untilMs > enteredMs
  return isLater ? { untilDay, untilMs, seq } : null
}

/**
 * What was said or would have been by the day is said on it, once: whoever puts a thing off wants to be asked again. That a
 * jar is ready is news and no question, so it only waits.
 */
export function postponed(series: Series, putOff: PutOff): Series {
  const { untilDay, untilMs } = putOff
  if (![series.fromDay, ...series.days].some((day) => day <= untilDay)) return series
  if (series.kind !== 'ready') {
    return atItsHour({ ...series, days: [untilDay, ...series.days.filter((day) => day > untilDay)] }, putOff)
  }
  return untilMs === null ? { ...series, heldUntilDay: untilDay } : { ...series, heldUntilMs: untilMs }
}

/** The reminder of the day is said at the hour it was put off to, whether or not one was said that morning. */
export function atItsHour(series: Series, { untilDay, untilMs, seq }: PutOff): Series {
  if (untilMs === null) return series
  const held = { ...series, heldUntilMs: untilMs }
  const isLaterStill = series.hour?.day === untilDay && series.hour.ms >= untilMs
  if (series.days[0] !== untilDay || isLaterStill) return held
  return { ...held, hour: { day: untilDay, ms: untilMs }, again: { day: untilDay, seq } }
}

/** Of what a pause holds back only the last is said, at its end. */
export function paused(series: Series, untilDay: number): Series {
  const held = series.days.filter((day) => day <= untilDay).length
  if (held === 0) return series
  return { ...series, days: series.days.slice(held - 1), heldUntilDay: Math.max(untilDay, series.heldUntilDay) }
}
