import { DomainError, isRefused } from '../../domain-error.ts'
import type { CalendarDay, DateSide, TypedDate } from '../quantities.ts'
import { readText, shown, type TypedText, textFrom } from '../read/tokens.ts'
import { daysBetween, isDay } from './calendar-day.ts'
import { type DayRead, numericDate } from './numeric-date.ts'
import { relativeDate } from './relative-date.ts'
import { weekdayNamed, weekdayOf } from './weekday-date.ts'

export interface DateSetting {
  /** The person's own day. */
  readonly today: CalendarDay
  /** Two letters (ISO 3166), or null where it is not known. */
  readonly country: string | null
}

const FROM_YEAR = 1900
const TO_YEAR = 2199

/** 1 to 12 by a month's name and its short ones. */
export const MONTHS: ReadonlyMap<string, number> = new Map(
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

const YEARS_LOOKED_AT = 10

/** Such days this year and the years after, or before; 29 February waits for its year (never more than eight). */
const suchDays = ({ month, day }: DayRead, { year }: CalendarDay, step: 1 | -1): readonly CalendarDay[] =>
  Array.from({ length: YEARS_LOOKED_AT }, (_, far) => ({ year: year + step * far, month, day })).filter(isDay)

/** The first such day from `today` on. */
const nextSuch = (read: DayRead, today: CalendarDay): CalendarDay | undefined =>
  suchDays(read, today, 1).find((each) => daysBetween(each, today) >= 0)

/** The last such day up to `today`. */
export const lastSuch = (read: DayRead, today: CalendarDay): CalendarDay | undefined =>
  suchDays(read, today, -1).find((each) => daysBetween(each, today) <= 0)

/** `Saturday 28 November`; null where the text is nothing of the kind. Of what is past, the weekday tells which year. */
const namedDate = (typed: TypedText, setting: DateSetting, side: DateSide): DayRead | null => {
  const [first, second] = typed.tokens
  const weekday = weekdayNamed(first?.text ?? '')
  const behind = textFrom(typed, second?.text === ',' ? 2 : 1)
  if (weekday === null || behind === '') return null
  const read = numericDate(behind, setting.country, side) ?? wordDate(readText(behind, typed.wanted))
  if (read === null || (read.year !== null && !isDay({ ...read, year: read.year }))) return read
  const { today } = setting
  const ahead = side === 'past' ? [lastSuch(read, today), nextSuch(read, today)] : [nextSuch(read, today)]
  const such = read.year === null ? ahead : [{ ...read, year: read.year }]
  const days = such.filter((day) => day !== undefined)
  const [nearest] = days
  const named = days.find((day) => weekdayOf(day) === weekday)
  if (named === undefined && nearest !== undefined) {
    throw new DomainError('bad_value', 'other_weekday', {
      typed: shown(typed.text),
      day: nearest,
      weekday: weekdayOf(nearest),
    })
  }
  return named ?? read
}

/** `15:00`, `at 3 pm`, behind a day. */
const HOUR = /[,\s]+(?:at |alle |ore )?(?:\d{1,2}[:.]\d{2}(?: ?[ap]\.?m\.?)?|\d{1,2} ?(?:[ap]\.?m\.?|h))$/i

/** Days are kept, no hours: what is too much of `today 15:00` is said. */
function noDate(text: string, setting: DateSetting, side: DateSide): DomainError {
  const hour = HOUR.exec(text.trim())
  const day = hour === null ? null : text.trim().slice(0, hour.index)
  return day === null || day === '' || isRefused(() => parseDate(day, setting, side))
    ? new DomainError('bad_value', 'no_date', { typed: shown(text), side })
    : new DomainError('bad_value', 'unexpected_text', { typed: shown(text), extra: hour![0].trim(), wanted: 'date' })
}

/**
 * A day from 1900 to 2199: `24 December`, `24 dicembre`, `Saturday 28 November`, `2026-12-24`, `tomorrow`, `3 days ago`,
 * `tra 2 settimane`, and `Saturday`, which `side` decides. Without a year the next such day, today included, and
 * `yearAssumed`; `6/7` is asked back unless a country decides.
 */
export const parseDate = (text: string, setting: DateSetting, side: DateSide = 'from_today'): TypedDate => {
  const read = dateIn(text, setting, side)
  if (read === null) throw noDate(text, setting, side)
  return read
}

/** The same; null where a text is nothing of the kind. */
export const dateIn = (text: string, setting: DateSetting, side: DateSide): TypedDate | null => {
  const { today, country } = setting
  const typed = readText(text, 'date')
  const plain = numericDate(typed.text, country, side) ?? relativeDate(typed, today, side) ?? wordDate(typed)
  const found = plain ?? namedDate(typed, setting, side)
  if (found === null) return null
  const day = found.year === null ? nextSuch(found, today) : { ...found, year: found.year }
  if (day !== undefined && (day.year < FROM_YEAR || day.year > TO_YEAR)) {
    const values = { typed: shown(text), fromYear: FROM_YEAR, toYear: TO_YEAR }
    throw new DomainError('bad_value', 'date_too_far', values)
  }
  if (day === undefined || !isDay(day)) throw new DomainError('bad_value', 'no_such_day', { typed: shown(text), side })
  return { kind: 'date', year: day.year, month: day.month, day: day.day, yearAssumed: found.year === null }
}

/** Within this many days ahead the coming day was meant, not last year's. Common practice, no source. */
const SOON_DAYS = 30

/** Whether a day ahead, its year assumed, is rather a coming one than the same day of last year. */
export const isSoonAhead = (daysAhead: number): boolean => daysAhead > 0 && daysAhead <= SOON_DAYS
