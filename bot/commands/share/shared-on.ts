import { type IsoDay, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt, minutesAt } from '../../../core/quantity/time/zone.ts'
import type { Share } from '../../../store/person.ts'

/** Milliseconds from 1970 to 2015, and the bits after them. Source: Discord's documentation of snowflakes. */
const EPOCH_MS = 1_420_070_400_000
const LATER_BITS = 22n

/** When its message was posted, by the clocks of this zone; null where it was posted nowhere. */
export function sharedAt({ postedIn }: Pick<Share, 'postedIn'>, zone: string) {
  if (postedIn === null) return null
  const ms = Number(BigInt(postedIn.messageId) >> LATER_BITS) + EPOCH_MS
  return { day: isoDay(dayAt(zone, ms)), minutes: minutesAt(zone, ms) }
}

export const sharedOn = (share: Pick<Share, 'postedIn'>, zone: string): IsoDay | null =>
  sharedAt(share, zone)?.day ?? null
