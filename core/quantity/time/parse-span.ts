import type { Span } from '../quantities.ts'
import { measureAt } from '../read/measure-at.ts'
import { expectEnd, readText } from '../read/tokens.ts'
import { unitsByKind } from '../read/units.ts'

const YEAR_DAYS = unitsByKind.span.get('year')?.factor ?? 0

/** A length of time from 1 hour to 20 years: `25 days`, `3 settimane`, `2 months` (kept as months), `1 anno`. */
export const parseSpan = (text: string): Span => {
  const typed = readText(text, 'span')
  const { value, unit, assumed, next } = measureAt(typed, 0, ['span'])
  expectEnd(typed, next)
  const isCalendar = unit.key === 'months' || unit.key === 'years'
  return {
    kind: 'span',
    days: isCalendar ? null : value,
    // Through days and back: 2 months are 2, not 1.9999999999999998.
    months: isCalendar ? Number(((12 * value) / YEAR_DAYS).toPrecision(12)) : null,
    nominalDays: value,
    unit: unit.key,
    assumed,
  }
}
