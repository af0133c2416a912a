import { DomainError } from '../../domain-error.ts'
import { numberWords } from '../../quantity/read/number-words.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { parseClockTime } from '../../quantity/time/parse-clock-time.ts'
import { dayNumberAt, instantOf, minutesAt } from '../../quantity/time/zone.ts'

const MINUTE_MS = 60_000
const HOUR_MINUTES = 60

const LATER = ['later', 'later today', 'più tardi', 'piu tardi']
const CLOCK =
  /^(?:today |oggi )?(?:at |alle )?(?:\d{1,2}:\d{2}(?: ?[ap]\.?m\.?)?|\d{1,2} ?[ap]\.?m\.?|noon|midday|mezzogiorno)$/
const SPAN = /^(?:in |tra |fra )?(\d{1,3}|\p{L}+) ?(h|hrs?|hours?|or[ae]|mins?|minutes?|minut[oi])$/u

/** The evening, or where that is near or over, three hours on; late in the evening is too late. */
const EVENING_MINUTES = 18 * HOUR_MINUTES
const ON_MINUTES = 3 * HOUR_MINUTES
const LATEST_MINUTES = 22 * HOUR_MINUTES

/** When, of somebody whose clocks are those of `zone` (IANA name). Throws `not_ahead`, `not_ahead_today`. */
export type HourAhead = (nowMs: number, zone: string) => number

const laterToday =
  (text: string): HourAhead =>
  (nowMs, zone) => {
    const now = minutesAt(zone, nowMs)
    const wanted = Math.min(LATEST_MINUTES, Math.max(EVENING_MINUTES, now + ON_MINUTES))
    if (wanted <= now) throw new DomainError('bad_value', 'not_ahead_today', { typed: shown(text) })
    return instantOf(zone, dayNumberAt(zone, nowMs), wanted)
  }

const nextAt =
  (minutes: number): HourAhead =>
  (nowMs, zone) => {
    const today = dayNumberAt(zone, nowMs)
    const ms = instantOf(zone, today, minutes)
    return ms > nowMs ? ms : instantOf(zone, today + 1, minutes)
  }

const after =
  (count: number, unit: string, text: string): HourAhead =>
  (nowMs) => {
    if (count === 0) throw new DomainError('bad_value', 'not_ahead', { typed: shown(text) })
    return nowMs + count * (unit.startsWith('m') ? 1 : HOUR_MINUTES) * MINUTE_MS
  }

/**
 * An hour still to come: `18:00`, `6 pm` (the next such time, today or tomorrow), `3 hours`, `30 minutes`, `later today`.
 * Null where the text is nothing of the kind; throws `no_clock_time` where the clock does not have it.
 */
export function hourAhead(text: string): HourAhead | null {
  const typed = text.trim().replace(/\s+/g, ' ').toLowerCase()
  if (LATER.includes(typed)) return laterToday(text)
  const [, count, unit] = SPAN.exec(typed) ?? []
  const number = count === undefined ? undefined : /^\d/.test(count) ? Number(count) : numberWords.get(count)
  if (number !== undefined && unit !== undefined) return after(number, unit, text)
  return CLOCK.test(typed) ? nextAt(parseClockTime(typed.replace(/^(?:today|oggi) /, ''))) : null
}
