import { DomainError } from '../../domain-error.ts'
import type { CalendarDay } from '../../quantity/quantities.ts'
import { addDays, daysBetween } from '../../quantity/time/calendar-day.ts'

/** How long a plant steeps and rests, in days; a fraction where hours are enough. */
export interface Times {
  readonly tasteDays: number
  readonly usualMinDays: number
  readonly usualMaxDays: number
  readonly restMinDays: number
}

export interface Schedule {
  readonly start: CalendarDay
  /** When each plant goes in, in the order given: the longest at the start, shorter ones later. */
  readonly addOn: readonly CalendarDay[]
  /** Whether each would go in later, had its maker not put all in at once. */
  readonly wouldWait: readonly boolean[]
  readonly tasteFrom: CalendarDay
  readonly strainFrom: CalendarDay
  readonly strainBy: CalendarDay
  /** The day after the last straining day. */
  readonly sweetenBy: CalendarDay
  readonly ready: CalendarDay
  readonly restDays: number
  /** What a feast too near took away: some of the rest first, then some of the steep. */
  readonly hurried: 'no' | 'rest' | 'steep'
  /** The last day on which an unhurried batch can be begun; null without a feast, or where it is past. */
  readonly latestStart: CalendarDay | null
  /** True where every plant is done within the day. */
  readonly isHours: boolean
}

/** The least rest that a feast too near leaves; harsh. Estimated; the usual 30 days are common practice. */
const LEAST_REST_DAYS = 7
/** From straining to sweetening. */
export const SWEETEN_DAYS = 1

/** Days that stand for the plants' own, from the start: of a batch that was made before, or as its maker said. */
export interface KeptDays {
  readonly steep: { readonly fromDays: number; readonly byDays: number }
  /** Null: the plants' own. */
  readonly restDays: number | null
  /** When each plant goes in, in the order of the plants; null: as it fits the day of straining. */
  readonly addOnDays: readonly number[] | null
  /** Strained within the day; left out: not. */
  readonly isHours?: boolean
}

/** So long a steep, as a maker said it; undefined where none was said. */
export function saidDays(span: { readonly nominalDays: number } | null): KeptDays | undefined {
  if (span === null) return undefined
  const isHours = span.nominalDays < 1
  const days = isHours ? 0 : Math.round(span.nominalDays)
  return { steep: { fromDays: days, byDays: days }, restDays: null, addOnDays: null, isHours }
}

interface Wanted {
  readonly start: CalendarDay
  readonly readyBy: CalendarDay | null
  /** Stands for the plants' own days. */
  readonly kept?: KeptDays | undefined
  /** Everything goes in at the start, at the maker's word; left out: the shorter ones later. */
  readonly areAllIn?: boolean | undefined
}

/** Days for plants that are strained together; throws `ready_too_soon` with the earliest day. */
export function schedule(plants: readonly Times[], { start, readyBy, kept, areAllIn = false }: Wanted): Schedule {
  const longest = plants.reduce((one, other) => (other.usualMinDays > one.usualMinDays ? other : one))
  const usualMin = kept?.steep.fromDays ?? Math.floor(longest.usualMinDays)
  const rest = kept?.restDays ?? Math.max(...plants.map(({ restMinDays }) => Math.ceil(restMinDays)))
  const delays = kept?.addOnDays ?? plants.map((plant) => delayOf(plant, usualMin, longest))
  const usualMax =
    kept?.steep.byDays ??
    Math.min(...plants.map(({ usualMaxDays }, index) => Math.floor(delays[index]! + usualMaxDays)))
  // What would have gone in later is tasted from its own first day.
  const waiting = plants.filter((_, index) => areAllIn && delays[index]! > 0)
  const taste = Math.floor(
    waiting.length === 0 ? longest.tasteDays : Math.max(1, Math.min(...waiting.map(({ tasteDays }) => tasteDays))),
  )
  const window = { usualMin, usualMax: Math.max(usualMin, usualMax), rest, taste }
  const fitted = fitInto(window, readyBy === null ? null : daysBetween(readyBy, start), start, readyBy)
  const early = usualMin - fitted.strainFrom
  const latestStart = readyBy === null ? null : addDays(readyBy, -(usualMin + SWEETEN_DAYS + rest))
  const ready = fitted.strainBy + SWEETEN_DAYS + fitted.rest
  return {
    start,
    addOn: delays.map((delay) => addDays(start, areAllIn ? 0 : Math.max(0, delay - early))),
    wouldWait: delays.map((delay) => areAllIn && delay - early > 0),
    tasteFrom: addDays(start, Math.min(window.taste, fitted.strainFrom)),
    strainFrom: addDays(start, fitted.strainFrom),
    strainBy: addDays(start, fitted.strainBy),
    sweetenBy: addDays(start, fitted.strainBy + SWEETEN_DAYS),
    ready: addDays(start, ready),
    restDays: fitted.rest,
    hurried: fitted.hurried,
    latestStart: latestStart !== null && daysBetween(latestStart, start) >= 0 ? latestStart : null,
    isHours: kept === undefined ? plants.every(({ usualMaxDays }) => usualMaxDays < 1) : kept.isHours === true,
  }
}

/**
 * A plant that would be over before the others are done goes in later, so that it is just done with them. However long a maker
 * steeps, those that take as long as any go in first.
 */
const delayOf = ({ usualMinDays, usualMaxDays }: Times, strainDay: number, longest: Times): number =>
  usualMaxDays >= Math.min(strainDay, Math.floor(longest.usualMinDays))
    ? 0
    : Math.max(0, strainDay - Math.floor(usualMinDays))

interface Window {
  readonly taste: number
  readonly usualMin: number
  readonly usualMax: number
  readonly rest: number
}

/** A later straining day first gives way, then rest, then the steep down to the day it is first tasted. */
function fitInto(
  { taste, usualMin, usualMax, rest }: Window,
  days: number | null,
  start: CalendarDay,
  readyBy: CalendarDay | null,
): { strainFrom: number; strainBy: number; rest: number; hurried: Schedule['hurried'] } {
  if (days === null || readyBy === null) return { strainFrom: usualMin, strainBy: usualMax, rest, hurried: 'no' }
  const unhurried = days - SWEETEN_DAYS - rest
  if (unhurried >= usualMin) {
    return { strainFrom: usualMin, strainBy: Math.min(usualMax, unhurried), rest, hurried: 'no' }
  }
  const leastRest = Math.min(LEAST_REST_DAYS, rest)
  const shorterRest = days - SWEETEN_DAYS - usualMin
  if (shorterRest >= leastRest) {
    return { strainFrom: usualMin, strainBy: usualMin, rest: shorterRest, hurried: 'rest' }
  }
  const shorterSteep = days - SWEETEN_DAYS - leastRest
  const leastSteep = Math.min(taste, usualMin)
  if (shorterSteep >= leastSteep) {
    return { strainFrom: shorterSteep, strainBy: shorterSteep, rest: leastRest, hurried: 'steep' }
  }
  const earliest = addDays(start, leastSteep + SWEETEN_DAYS + leastRest)
  throw new DomainError('unreachable', 'ready_too_soon', { readyBy, earliest })
}
