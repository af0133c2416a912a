import { type IsoDay, isoDay } from './calendar-day.ts'

const DAY_MS = 86_400_000

const digit = (text: string, at: number): number => text.charCodeAt(at) - 48
const twoDigits = (text: string, at: number): number => digit(text, at) * 10 + digit(text, at + 1)

/** Whole days from 1 January 1970 to a day that `isoDay` wrote. */
export const dayNumber = (day: IsoDay): number =>
  Date.UTC(twoDigits(day, 0) * 100 + twoDigits(day, 2), twoDigits(day, 5) - 1, twoDigits(day, 8)) / DAY_MS

/** A memo of a pure function, bounded: reminders of a million jars name the same few days. */
const written = new Map<number, IsoDay>()
const MOST_DAYS = 20_000

/** The day so many days after 1 January 1970, as `isoDay` writes it. */
export function isoOf(dayNumber: number): IsoDay {
  const known = written.get(dayNumber)
  if (known !== undefined) return known
  if (written.size >= MOST_DAYS) written.clear()
  const date = new Date(dayNumber * DAY_MS)
  const day = isoDay({ year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() })
  written.set(dayNumber, day)
  return day
}
