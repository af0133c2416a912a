import { dayFromIso } from '../../../core/quantity/time/calendar-day.ts'
import { isoOf } from '../../../core/quantity/time/day-number.ts'
import type { ShelfJar } from '../../text/messages/pictures.ts'

/** Where the days lie on a picture. */
export interface CalendarScale {
  /** Day numbers; the last one outside. */
  readonly first: number
  readonly last: number
  /** The beginning of a day, no further out than the edges. */
  xOf(day: number): number
  /** The first of every month within it. */
  readonly months: readonly { readonly day: number; readonly month: number }[]
}

/** Whatever lies further back or ahead is cut off, so that the weeks around today stay wide. */
const MOST_BACK_DAYS = 75
const MOST_AHEAD_DAYS = 150
const LEAST_BACK_DAYS = 7
const LEAST_AHEAD_DAYS = 28

export function calendarScale(jars: readonly ShelfJar[], today: number, left: number, width: number): CalendarScale {
  const starts = jars.flatMap(({ spans }) => spans.map(({ from }) => from))
  const ends = jars.flatMap(({ spans, readyDay }) => [
    ...spans.map(({ to }) => to),
    ...(readyDay === null ? [] : [readyDay]),
  ])
  const first = Math.max(today - MOST_BACK_DAYS, Math.min(today - LEAST_BACK_DAYS, ...starts.map((day) => day - 2)))
  const last = Math.min(today + MOST_AHEAD_DAYS, Math.max(today + LEAST_AHEAD_DAYS, ...ends.map((day) => day + 5)))
  const months: { day: number; month: number }[] = []
  for (let day = first; day < last; day++) {
    const { day: ofMonth, month } = dayFromIso(isoOf(day))
    if (ofMonth === 1) months.push({ day, month })
  }
  return {
    first,
    last,
    months,
    xOf: (day) => left + (width * (Math.min(last, Math.max(first, day)) - first)) / (last - first),
  }
}
