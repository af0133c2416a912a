import { DomainError } from '../../domain-error.ts'
import { shown } from '../read/tokens.ts'

const CLOCK = /^(?:at |alle |ore )?(\d{1,2})(?:[:.h](\d{2}))? ?(?:h|o['’]clock|(a\.?m\.?|p\.?m\.?))?$/
const NAMED: ReadonlyMap<string, number> = new Map([
  ['noon', 720],
  ['midday', 720],
  ['mezzogiorno', 720],
  ['midnight', 0],
  ['mezzanotte', 0],
])

/** Of twelve hours: 12 am is midnight, 12 pm is noon. */
const ofTwelve = (hour: number, isAfternoon: boolean): number => (hour % 12) + (isAfternoon ? 12 : 0)

/** `9`, `09:00`, `9 am`, `18.30`, `ore 21`: in minutes after midnight, 0 to 1439. Throws `no_clock_time`. */
export function parseClockTime(text: string): number {
  const typed = text.trim().replace(/\s+/g, ' ').toLowerCase()
  const named = NAMED.get(typed)
  if (named !== undefined) return named
  const match = CLOCK.exec(typed)
  const [hour, minute, half] = [Number(match?.[1]), Number(match?.[2] ?? 0), match?.[3]]
  const isHour = half === undefined ? hour <= 23 : hour >= 1 && hour <= 12
  if (match === null || !isHour || minute > 59) {
    throw new DomainError('bad_value', 'no_clock_time', { typed: shown(text) })
  }
  return (half === undefined ? hour : ofTwelve(hour, half.startsWith('p'))) * 60 + minute
}
