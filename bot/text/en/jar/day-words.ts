import { dayFromIso, daysBetween, type IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../../format.ts'
import { MONTHS } from '../day-text.ts'

const longMonth = (month: number): string => MONTHS[month - 1] ?? ''

/** The year only where it is not this one. */
const written = (iso: IsoDay, today: IsoDay, monthName: (month: number) => string): string => {
  const { year, month, day } = dayFromIso(iso)
  const ofYear = year === dayFromIso(today).year ? '' : ` ${year}`
  return `${day} ${monthName(month)}${ofYear}`
}

/** `9 December`; `9 January 2027` where that is another year. */
export const dayWords = (iso: IsoDay, today: IsoDay, format: Format): string =>
  format.day(dayFromIso(iso), written(iso, today, longMonth))

/** `9 Dec`. */
export const shortDayWords = (iso: IsoDay, today: IsoDay, format: Format): string =>
  format.day(
    dayFromIso(iso),
    written(iso, today, (month) => longMonth(month).slice(0, 3)),
  )

/** `today`, `tomorrow`, `on 9 December`. */
export function onDay(iso: IsoDay, today: IsoDay, format: Format, words: typeof dayWords = dayWords): string {
  const ahead = daysBetween(dayFromIso(iso), dayFromIso(today))
  if (ahead === 0) return 'today'
  return ahead === 1 ? 'tomorrow' : `on ${words(iso, today, format)}`
}

/** `1 day`, `12 days`. */
export const daysWords = (count: number): string => `${count} ${count === 1 ? 'day' : 'days'}`
