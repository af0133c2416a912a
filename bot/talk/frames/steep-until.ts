import { unlessRefused } from '../../../core/domain-error.ts'
import { daysBetween } from '../../../core/quantity/time/calendar-day.ts'
import { parseDate } from '../../../core/quantity/time/parse-date.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { steepSpan } from '../bits/steep-span.ts'

const STEEPS =
  /\b(?:steep|soak|infuse|macerate|sit|stand|leave|let)(?:s|ed|ing)?\b(?: \p{L}+){0,5} (?:until|till|til|up to) |\b(?:macer\p{L}+|infus\p{L}+|ripos\p{L}+) (?:\p{L}+ ){0,3}fino a(?:l|lla)? /iu

/** `Let it steep till Christmas`: the day up to which it steeps; null where no day is so said. */
export const steepUntil = ({ bits, typed }: Pick<Sentence, 'bits' | 'typed'>): Bit | null => {
  const day = bits.findLast(({ kind, text }) => kind === 'date' && text !== 'today')
  const from = day === undefined ? undefined : typed.tokens[day.from]?.from
  const before = from === undefined ? '' : typed.text.slice(0, from)
  const said = STEEPS.exec(before)
  return day !== undefined && said !== null && said.index + said[0].length === before.length ? day : null
}

/** How long plants steep in a spirit is told, and no day on which it is to be ready. */
export const isSteepTold = (sentence: Sentence): boolean =>
  sentence.has('plants_and_spirit') && (steepUntil(sentence) ?? steepSpan(sentence)) !== null

/** The same in days from today; null of a day that is not ahead. */
export function daysUntil({ text }: Bit, { today }: Pick<Sentence, 'today'>): number | null {
  const read = unlessRefused(() => parseDate(text, { today, country: null }))
  const days = read === null ? 0 : daysBetween(read, today)
  return days > 0 ? days : null
}
