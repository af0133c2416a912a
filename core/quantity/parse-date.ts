import { DomainError } from '../domain-error.ts'
import { daysBetween, isDay } from './calendar.ts'
import { type DayRead, numericDate } from './numeric-date.ts'
import type { CalendarDay, TypedDate } from './quantities.ts'
import { relativeDate } from './relative-date.ts'
import { readText, shown, type TypedText } from './typed-text.ts'
import type { DateSide } from './weekday-date.ts'

export interface DateSetting {
  /** The person's own day. */
  readonly today: CalendarDay
  /** Two letters (ISO 3166), or null where it is not known. */
  readonly country: string | null
}

const FROM_YEAR = 1900
const TO_YEAR = 2199

const MONTHS: ReadonlyMap<string, number> = new Map(
  [
    'january jan gennaio gen',
    'february feb febbraio',
    'march mar marzo',
    'april apr aprile',
    'may maggio mag',
    'june jun giugno giu',
    'july jul luglio lug',
    'august aug agosto ago',
    'september sep sept settembre set sett',
    'october oct ottobre ott',
    'november nov novembre',
    'december dec dicembre dic',
  ].flatMap((words, index) => words.split(' ').map((word): [string, number] => [word, index + 1])),
)

const FILLERS = new Set([',', 'of', 'on', 'the', 'di', 'il', 'del', '°', 'st', 'nd', 'rd', 'th'])

/** `24 December 2026`, `Dec 24`, `il 24 dicembre`: the month in words; null where it is not. */
const wordDate = ({ tokens }: TypedText): DayRead | null => {
  const [first, second, third, ...rest] = tokens.filter(({ text }) => !FILLERS.has(text))
  if (first === undefined || second === undefined || rest.length > 0) return null
  const [dayToken, monthToken] = MONTHS.has(first.text) ? [second, first] : [first, second]
  const month = MONTHS.get(monthToken.text)
  if (month === undefined || !/^[0-9]{1,2}$/.test(dayToken.text)) return null
  if (third !== undefined && !/^[0-9]{4}$/.test(third.text)) return null
  return { year: third === undefined ? null : Number(third.text), month, day: Number(dayToken.text) }
}

/** The first such day from `today` on; 29 February waits for its year (never more than eight). */
const nextSuch = ({ month, day }: DayRead, today: CalendarDay): CalendarDay | undefined =>
  Array.from({ length: 10 }, (_, later) => ({ year: today.year + later, month, day })).find(
    (each) => isDay(each) && daysBetween(each, today) >= 0,
  )

/**
 * A day from 1900 to 2199: `24 December`, `24 dicembre`, `2026-12-24`, `tomorrow`, `3 days ago`, `tra 2 settimane`, and
 * `Saturday`, which `side` decides. Without a year the next such day, today included, and `yearAssumed`; `6/7` is asked
 * back unless a country decides.
 */
export const parseDate = (text: string, { today, country }: DateSetting, side: DateSide = 'from_today'): TypedDate => {
  const typed = readText(text, 'date')
  const found = numericDate(typed.text, country, side) ?? relativeDate(typed, today, side) ?? wordDate(typed)
  if (found === null) throw new DomainError('bad_value', 'no_date', { typed: shown(text), side })
  const day = found.year === null ? nextSuch(found, today) : { ...found, year: found.year }
  if (day !== undefined && (day.year < FROM_YEAR || day.year > TO_YEAR)) {
    const values = { typed: shown(text), fromYear: FROM_YEAR, toYear: TO_YEAR }
    throw new DomainError('bad_value', 'date_too_far', values)
  }
  if (day === undefined || !isDay(day)) throw new DomainError('bad_value', 'no_such_day', { typed: shown(text), side })
  return { kind: 'date', year: day.year, month: day.month, day: day.day, yearAssumed: found.year === null }
}
