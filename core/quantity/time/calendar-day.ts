import type { CalendarDay } from '../quantities.ts'

const DAY_MS = 86_400_000

const instantMs = ({ year, month, day }: CalendarDay): number => Date.UTC(year, month - 1, day)

const dayOf = (ms: number): CalendarDay => {
  const date = new Date(ms)
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() }
}

/** Of the Gregorian calendar; `year` 100 to 9999. */
export const isDay = ({ year, month, day }: CalendarDay): boolean =>
  month >= 1 && month <= 12 && day >= 1 && day <= dayOf(Date.UTC(year, month, 0)).day

/** Negative, 0 or positive as `a` is before, the same as or after `b`; in days. */
export const daysBetween = (a: CalendarDay, b: CalendarDay): number => (instantMs(a) - instantMs(b)) / DAY_MS

/** `days` whole days later, earlier if negative. */
export const addDays = (day: CalendarDay, days: number): CalendarDay => dayOf(instantMs(day) + days * DAY_MS)

/** `months` whole months later; the last day of the month where the month is too short. */
export const addMonths = ({ year, month, day }: CalendarDay, months: number): CalendarDay => {
  const lastDay = dayOf(Date.UTC(year, month + months, 0))
  return { ...lastDay, day: Math.min(day, lastDay.day) }
}

const twoDigits = (value: number): string => String(value).padStart(2, '0')

/** `2026-12-24` (ISO 8601), as days are stored and compared. */
export type IsoDay = string

export const isoDay = ({ year, month, day }: CalendarDay): IsoDay =>
  `${String(year).padStart(4, '0')}-${twoDigits(month)}-${twoDigits(day)}`

/** Minutes after midnight, 0 to 1439: `09:00` (ISO 8601). */
export const isoTime = (minutes: number): string => `${twoDigits(Math.floor(minutes / 60))}:${twoDigits(minutes % 60)}`

/** The day that `isoDay` wrote. */
export const dayFromIso = (iso: IsoDay): CalendarDay => {
  const [year = 0, month = 0, day = 0] = iso.split('-').map(Number)
  return { year, month, day }
}
