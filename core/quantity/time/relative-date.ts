import { DomainError } from '../../domain-error.ts'
import type { CalendarDay, DateSide } from '../quantities.ts'
import { accepted, isWithin } from '../read/accepted-ranges.ts'
import { numberWords } from '../read/number-words.ts'
import { readNumber } from '../read/read-number.ts'
import { shown, type TypedText } from '../read/tokens.ts'
import { unitAt } from '../read/unit-at.ts'
import { addDays, addMonths } from './calendar-day.ts'
import { weekdayDate } from './weekday-date.ts'

const NAMED_DAYS: ReadonlyMap<string, number> = new Map([
  ['today', 0],
  ['oggi', 0],
  ['tomorrow', 1],
  ['domani', 1],
  ['dopodomani', 2],
  ['day after tomorrow', 2],
  ['yesterday', -1],
  ['ieri', -1],
  ['day before yesterday', -2],
])

const IN = ['in', 'tra', 'fra']
const AGO = ['ago', 'back', 'fa']

/** The whole number and unit of time from piece `at` on. */
const stepAt = (typed: TypedText, at: number): { count: number; unit: string; days: number; next: number } | null => {
  const word = numberWords.get(typed.tokens[at]?.text ?? '')
  const number = word === undefined ? readNumber(typed, at) : null
  const [count, another] = word === undefined ? (number?.readings ?? []).map(({ value }) => value) : [word]
  const found = unitAt(typed, number?.next ?? at + 1, ['span'])
  if (count === undefined || another !== undefined || !Number.isInteger(count)) return null
  if (found === null || found.unit.key === 'hours') return null
  return { count, unit: found.unit.key, days: count * found.unit.factor, next: found.next }
}

/**
 * `today`, `domani`, `3 days ago`, `in two weeks`, `un mese fa`, `Saturday`, counted from `today`, and of a day that lies
 * ahead `2 weeks`; null where the text is nothing of the kind. At most 20 years away, else `out_of_range`.
 */
export const relativeDate = (typed: TypedText, today: CalendarDay, side: DateSide): CalendarDay | null => {
  const { tokens, text } = typed
  const words = tokens.map((token) => token.text)
  const named = NAMED_DAYS.get(words.filter((word) => word !== 'the').join(' '))
  if (named !== undefined) return addDays(today, named)
  const weekday = weekdayDate(words, today, side)
  if (weekday !== null) return weekday
  const saysIn = IN.includes(words[0] ?? '')
  const step = stepAt(typed, saysIn ? 1 : 0)
  if (step === null) return null
  const isEarlier = !saysIn && AGO.includes(words[step.next] ?? '')
  // `2 weeks` of a day that lies ahead can only be counted from today.
  const isLater = saysIn || (side === 'after_today' && words.length === step.next)
  if (words.length !== step.next + (isEarlier ? 1 : 0) || isLater === isEarlier) return null
  if (step.count !== 0 && !isWithin(accepted.spanDays, step.days)) {
    throw new DomainError('bad_value', 'out_of_range', { typed: shown(text), wanted: 'span' })
  }
  const sign = isLater ? 1 : -1
  if (step.unit === 'months') return addMonths(today, sign * step.count)
  if (step.unit === 'years') return addMonths(today, sign * 12 * step.count)
  return addDays(today, sign * step.days)
}
