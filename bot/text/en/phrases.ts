import type { Trust } from '../../../core/botanical/evidence/trust.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { dayFromIso, daysBetween, type IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../format.ts'

const LOCALE = 'en-GB'

const and = new Intl.ListFormat(LOCALE, { type: 'conjunction' })
const or = new Intl.ListFormat(LOCALE, { type: 'disjunction' })
const plurals = new Intl.PluralRules(LOCALE)

/** `a`, `a and b`, `a, b and c`. */
export const listed = (parts: readonly string[]): string => and.format(parts)

/** `a`, `a or b`, `a, b or c`. */
export const either = (parts: readonly string[]): string => or.format(parts)

/** `is` of one, `are` of several. */
export const plural = (count: number, one: string, several = `${one}s`): string =>
  plurals.select(count) === 'one' ? one : several

/** `1 jar`, `2 jars`. */
export const counted = (count: number, one: string, several?: string): string =>
  `${count} ${plural(count, one, several)}`

/** `14 to 21 days`; of no day `a few hours`. */
export const spanWords = ({ fromDays, byDays }: { readonly fromDays: number; readonly byDays: number }): string => {
  if (byDays === 0) return 'a few hours'
  return fromDays === byDays ? counted(byDays, 'day') : `${fromDays} to ${byDays} days`
}

/** The first names of many, and how many more there are. */
export const firstNames = (names: readonly string[], most: number): string =>
  names.length <= most + 1 ? listed(names) : `${names.slice(0, most).join(', ')} and ${names.length - most} more`

/** With a capital, to begin a sentence. */
export const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** Without one, to go on after a colon. */
export const uncapital = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`

/** No number is torn from its unit. */
export const bound = (text: string): string => text.replace(/(?<=\d) (?=(?:%|°C|ml|cl|l|g|kg)(?!\p{L}))/gu, '\u00a0')

/** `A lemon`, `an orange`. */
export const oneOf = (thing: string): string => `${/^[aeiou]/i.test(thing) ? 'an' : 'a'} ${thing}`

/** `an` before 8, 11, 18, 80 to 89 and so on, as they are said, else `a`. */
export const articleOf = (number: string): 'a' | 'an' => (/^(?:8|1[18](?!\d))/.test(number) ? 'an' : 'a')

/** `twice`, `3 times`. */
export const timesText = (count: number): string => (count === 2 ? 'twice' : `${count} times`)

const named = (options: Intl.DateTimeFormatOptions, dates: readonly Date[]): readonly string[] => {
  const format = new Intl.DateTimeFormat(LOCALE, { ...options, timeZone: 'UTC' })
  return dates.map((date) => format.format(date))
}

const numbered = (count: number): readonly number[] => [...Array(count).keys()]

export const MONTHS = named(
  { month: 'long' },
  numbered(12).map((month) => new Date(Date.UTC(2024, month))),
)

/** From Monday on, which 1 January 2024 was. */
export const WEEKDAYS = named(
  { weekday: 'long' },
  numbered(7).map((day) => new Date(Date.UTC(2024, 0, 1 + day))),
)

/** `9 December 2026`. */
export const dayText = ({ year, month, day }: CalendarDay): string => `${day} ${MONTHS[month - 1]} ${year}`

const longMonth = (month: number): string => MONTHS[month - 1] ?? ''

/** `1 Sep`. */
export const shortDayText = ({ month, day }: CalendarDay): string => `${day} ${longMonth(month).slice(0, 3)}`

/** `November 2027`: of what is known to within some weeks. */
export const monthText = ({ year, month }: Pick<CalendarDay, 'year' | 'month'>): string =>
  `${MONTHS[month - 1]} ${year}`

/** From so many days on a month alone might be read as that of this year. */
const LONG_DAYS = 300

/** `early November`, `mid-November`, `late November`, with the year where it is long after the other day. */
export function partOfMonth(on: CalendarDay, after: CalendarDay): string {
  const { year, month, day } = on
  const part = day <= 10 ? 'early ' : day <= 20 ? 'mid-' : 'late '
  return `${part}${longMonth(month)}${daysBetween(on, after) < LONG_DAYS ? '' : ` ${year}`}`
}

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

/** `from 15 Sep to 1 Oct`, `from 1 to 6 Oct`, `on 5 May`. */
export const spanText = (from: IsoDay, by: IsoDay, today: IsoDay, format: Format): string => {
  const last = shortDayWords(by, today, format)
  if (from === by) return `on ${last}`
  const [one, other] = [dayFromIso(from), dayFromIso(by)]
  const isSameMonth = one.year === other.year && one.month === other.month
  return `from ${isSameMonth ? format.day(one, `${one.day}`) : shortDayWords(from, today, format)} to ${last}`
}

/** `today`, `tomorrow`, `on 9 December`. */
export function onDay(iso: IsoDay, today: IsoDay, format: Format, words: typeof dayWords = dayWords): string {
  const ahead = daysBetween(dayFromIso(iso), dayFromIso(today))
  if (ahead === 0) return 'today'
  return ahead === 1 ? 'tomorrow' : `on ${words(iso, today, format)}`
}

/** `1 day`, `12 days`. */
export const daysWords = (count: number): string => counted(count, 'day')

const FEW = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'] as const

/** `five` of a few, `12` of many. */
export const countWord = (count: number): string => FEW[count] ?? `${count}`

/** How far what is said is to be trusted. */
export const trustNamed: Readonly<Record<Trust, string>> = {
  published: 'published',
  derived: 'worked out',
  common_practice: 'common practice',
  estimated: 'estimated',
  memory: 'from memory',
  not_found: 'nothing found',
}
