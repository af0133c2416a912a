import type { CalendarDay } from '../quantities.ts'

/** Easter Sunday of the Gregorian calendar; the anonymous algorithm of 1876 (Butcher), as in Meeus, Astronomical Algorithms, ch. 8. */
export function easterOf(year: number): CalendarDay {
  const [a, b, c] = [year % 19, Math.floor(year / 100), year % 100]
  const [d, e] = [Math.floor(b / 4), b % 4]
  const g = Math.floor((8 * b + 13) / 25)
  const h = (19 * a + b - d - g + 15) % 30
  const [i, k] = [Math.floor(c / 4), c % 4]
  const l = (32 + 2 * e + 2 * i - h - k) % 7
  const m = Math.floor((a + 11 * h + 19 * l) / 433)
  const month = Math.floor((h + l - 7 * m + 90) / 25)
  return { year, month, day: (h + l - 7 * m + 33 * month + 19) % 32 }
}
