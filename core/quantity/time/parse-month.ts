import { DomainError } from '../../domain-error.ts'
import { shown } from '../read/tokens.ts'
import { MONTHS } from './parse-date.ts'

/** A month, 1 to 12, or the one that it is. */
export type MonthTyped = number | 'now'

const NOW = /^(?:now|today|this month|adesso|ora|oggi|questo mese)$/i

/** 1 to 12 of a month's name in English or Italian; null where a word is none. */
export const monthNamed = (word: string): number | null => MONTHS.get(word.toLowerCase()) ?? null

/** `october`, `ottobre`, `10`, `now`. Throws `no_month`. */
export function parseMonth(text: string): MonthTyped {
  const typed = text.trim()
  if (NOW.test(typed)) return 'now'
  const number = /^\d{1,2}$/.test(typed) ? Number(typed) : monthNamed(typed)
  if (number === null || number < 1 || number > 12)
    throw new DomainError('bad_value', 'no_month', { typed: shown(text) })
  return number
}
