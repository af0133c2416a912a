import type { CalendarDay } from '../quantities.ts'

const SECOND_MS = 1000
const MINUTE_MS = 60_000
const DAY_MS = 86_400_000

/** What is remembered of one zone: how far its clocks were ahead of UTC when a day of UTC began, and when they were set. */
interface Zone {
  readonly format: Intl.DateTimeFormat
  readonly aheadMs: Map<number, number>
  readonly setAtMs: Map<number, number>
  /** How far ahead they are all of a day, of the day before and of the day after; null where they are set meanwhile. */
  readonly calmAheadMs: Map<number, number | null>
}

/** A memo of a pure function, bounded; there are about 600 names of zones. */
const zones = new Map<string, Zone>()
const MOST_ZONES = 600
const MOST_DAYS = 20_000

function zoneOf(name: string): Zone {
  const known = zones.get(name)
  if (known !== undefined) return known
  const [oldest] = zones.keys()
  if (zones.size >= MOST_ZONES && oldest !== undefined) zones.delete(oldest)
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone: name,
    calendar: 'gregory',
    numberingSystem: 'latn',
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  })
  const zone: Zone = { format, aheadMs: new Map(), setAtMs: new Map(), calmAheadMs: new Map() }
  zones.set(name, zone)
  return zone
}

/** As the system tells it; `ms` in whole seconds. */
function readAheadMs({ format }: Zone, ms: number): number {
  const [month = 0, day = 0, year = 0, hour = 0, minute = 0, second = 0] = format.format(ms).match(/\d+/g)!.map(Number)
  return Date.UTC(year, month - 1, day, hour, minute, second) - ms
}

/** What a map remembers of a day, or else is told of it. */
function recalled<Told>(days: Map<number, Told>, day: number, tell: () => Told): Told {
  const known = days.get(day)
  if (known !== undefined) return known
  if (days.size >= MOST_DAYS) days.clear()
  const told = tell()
  days.set(day, told)
  return told
}

const aheadAtDawnMs = (zone: Zone, utcDay: number): number =>
  recalled(zone.aheadMs, utcDay, () => readAheadMs(zone, utcDay * DAY_MS))

const calmAheadMs = (zone: Zone, day: number): number | null =>
  recalled(zone.calmAheadMs, day, () => {
    const aheadMs = aheadAtDawnMs(zone, day - 1)
    return [day, day + 1, day + 2].every((other) => aheadAtDawnMs(zone, other) === aheadMs) ? aheadMs : null
  })

/** When in a day of UTC the clocks were set, to the second. No zone has set them twice in one day since 1900. */
const setAtMs = (zone: Zone, utcDay: number, beforeMs: number): number =>
  recalled(zone.setAtMs, utcDay, () => {
    let [early, late] = [(utcDay * DAY_MS) / SECOND_MS, ((utcDay + 1) * DAY_MS) / SECOND_MS]
    while (late - early > 1) {
      const middle = Math.floor((early + late) / 2)
      if (readAheadMs(zone, middle * SECOND_MS) === beforeMs) early = middle
      else late = middle
    }
    return late * SECOND_MS
  })

function aheadAtMs(zone: Zone, ms: number): number {
  const utcDay = Math.floor(ms / DAY_MS)
  const [beforeMs, afterMs] = [aheadAtDawnMs(zone, utcDay), aheadAtDawnMs(zone, utcDay + 1)]
  return beforeMs === afterMs || ms < setAtMs(zone, utcDay, beforeMs) ? beforeMs : afterMs
}

const localMs = (zone: string, ms: number): number => ms + aheadAtMs(zoneOf(zone), ms)

/** Whole days since 1 January 1970 where clocks show that day. `zone` an IANA name; years 1900 to 2199. */
export const dayNumberAt = (zone: string, ms: number): number => Math.floor(localMs(zone, ms) / DAY_MS)

/** The day that it is in a zone (IANA name) at an instant of the years 1900 to 2199. */
export function dayAt(zone: string, ms: number): CalendarDay {
  const local = new Date(localMs(zone, ms))
  return { year: local.getUTCFullYear(), month: local.getUTCMonth() + 1, day: local.getUTCDate() }
}

/** What the clocks show in a zone (IANA name) at an instant of the years 1900 to 2199, in whole minutes after midnight. */
export const minutesAt = (zone: string, ms: number): number =>
  Math.floor((localMs(zone, ms) - dayNumberAt(zone, ms) * DAY_MS) / MINUTE_MS)

/** As `instantAt`, of a day counted from 1 January 1970. */
export function instantOf(zone: string, dayNumber: number, minutes: number): number {
  const known = zoneOf(zone)
  const wallMs = dayNumber * DAY_MS + minutes * MINUTE_MS
  const calmMs = calmAheadMs(known, dayNumber)
  if (calmMs !== null) return wallMs - calmMs
  const [beforeMs, afterMs] = [aheadAtMs(known, wallMs - DAY_MS), aheadAtMs(known, wallMs + DAY_MS)]
  if (aheadAtMs(known, wallMs - beforeMs) === beforeMs) return wallMs - beforeMs
  return aheadAtMs(known, wallMs - afterMs) === afterMs ? wallMs - afterMs : wallMs - beforeMs
}

/**
 * When clocks in a zone (IANA name) show a time, in minutes after midnight (0 to 1439) of a day of the years 1900 to 2199.
 * A time that comes twice is its first. One that is skipped is moved on by what was skipped: 02:30 becomes 03:30, and a
 * time on a day that was left out (Apia, 30 December 2011) the same on the next.
 */
export const instantAt = (zone: string, { year, month, day }: CalendarDay, minutes: number): number =>
  instantOf(zone, Date.UTC(year, month - 1, day) / DAY_MS, minutes)
