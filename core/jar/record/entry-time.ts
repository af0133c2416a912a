import { DomainError } from '../../domain-error.ts'
import type { CalendarDay } from '../../quantity/quantities.ts'
import { addMonths, daysBetween, isoDay } from '../../quantity/time/calendar-day.ts'
import { dayAt, instantAt } from '../../quantity/time/zone.ts'
import type { JarEntry, Moment } from '../entry/entry.ts'
import { nameIn } from '../entry/name-in.ts'
import { effective } from '../entry/standing-entries.ts'

interface Setting {
  readonly nowMs: number
  /** IANA name. */
  readonly zone: string
  /** Of the jar; none for its start, also where that is moved. */
  readonly entries: readonly JarEntry[]
}

const NOON_MINUTES = 720
const LONGEST_AGO_MONTHS = 20 * 12

/**
 * When something happened that its maker gives a day of, or none: now. A day alone is its noon, or now where that is
 * earlier, but after all else of that day in the jar, whatever was done to the clock since.
 * Throws `in_the_future`, `before_start`, and `date_too_far` beyond 20 years back.
 */
export function momentOf(day: CalendarDay | null, { nowMs, zone, entries }: Setting): Moment {
  const happened = effective(entries)
  const [start] = happened
  const today = dayAt(zone, nowMs)
  const on = day ?? today
  const iso = isoDay(on)
  if (daysBetween(on, today) > 0) throw new DomainError('bad_value', 'in_the_future', { typed: iso })
  if (start?.kind === 'started' && iso < start.day) {
    throw new DomainError('wrong_stage', 'before_start', { jar: nameIn(happened) ?? start.name, day: iso })
  }
  if (daysBetween(on, addMonths(today, -LONGEST_AGO_MONTHS)) < 0) {
    const values = { typed: iso, fromYear: today.year - LONGEST_AGO_MONTHS / 12, toYear: today.year }
    throw new DomainError('bad_value', 'date_too_far', values)
  }
  const others = happened.filter((entry) => entry.day === iso || entry === start).map(({ atMs }) => atMs)
  const saidMs = day === null ? nowMs : Math.min(nowMs, instantAt(zone, on, NOON_MINUTES))
  return { atMs: Math.max(saidMs, ...others), day: iso, zone }
}
