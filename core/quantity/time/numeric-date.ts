import { DomainError } from '../../domain-error.ts'
import type { DateSide } from '../quantities.ts'
import { shown } from '../read/tokens.ts'
import { isDay } from './calendar-day.ts'

/** A day whose year may be missing. */
export interface DayRead {
  readonly year: number | null
  readonly month: number
  readonly day: number
}

const NUMERIC = /^([0-9]{1,4})([-/.])([0-9]{1,2})(?:\2([0-9]{4}|[0-9]{2}))?$/

// 29 February exists in some year.
const isPossible = ({ year, month, day }: DayRead): boolean => isDay({ year: year ?? 2000, month, day })

/** Countries that write the month first; everybody else's `6/7` is 6 July. */
const isMonthFirst = (country: string): boolean => country.toUpperCase() === 'US'

const yearOf = (digits: string | undefined): number | null => {
  if (digits === undefined) return null
  return digits.length === 2 ? 2000 + Number(digits) : Number(digits)
}

/**
 * `2026-12-24`, `24/12/2026`, `24.12.26`, `24/6`; null where the text is nothing of the kind.
 * Throws `day_or_month` where neither the country (two letters) nor the digits decide, `no_such_day` for `31/11`.
 */
export const numericDate = (text: string, country: string | null, side: DateSide): DayRead | null => {
  const [, first = '', separator, second = '', last] = NUMERIC.exec(text) ?? []
  if (separator === undefined) return null
  if (first.length > 2) {
    const isIso = first.length === 4 && last?.length === 2
    return isIso ? { year: Number(first), month: Number(second), day: Number(last) } : null
  }
  const year = yearOf(last)
  const dayFirst = { year, month: Number(second), day: Number(first) }
  const monthFirst = { year, month: Number(first), day: Number(second) }
  const possible = [dayFirst, monthFirst].filter(isPossible)
  const [only, another] = possible
  if (only === undefined) throw new DomainError('bad_value', 'no_such_day', { typed: shown(text), side })
  // Nobody writes dots month-first; and a year makes `24/12/2026` a date that can only be read one way.
  const isDayFirst = country === null ? separator === '.' && year !== null : !isMonthFirst(country)
  const isDecided = country !== null || isDayFirst
  const decided = isDayFirst ? dayFirst : monthFirst
  if (isDecided && possible.includes(decided)) return decided
  const isSame = another === undefined || (another.day === only.day && another.month === only.month)
  if (year !== null && isSame) return only
  const days = isSame ? [only] : possible
  throw new DomainError('ambiguous', 'day_or_month', {
    typed: shown(text),
    days: days.map(({ month, day }) => ({ month, day })),
  })
}
