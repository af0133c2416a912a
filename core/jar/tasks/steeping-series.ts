import { dayNumber } from '../../quantity/time/day-number.ts'
import { dayNumberAt } from '../../quantity/time/zone.ts'
import type { Of, Story } from '../state/jar-state.ts'
import { plantsToAdd } from '../state/later-plants.ts'
import { enteredDay, type Hour, type Series, series } from './reminder-days.ts'

const HOUR_MS = 3_600_000
const WEEK_DAYS = 7
const WEEKS_DAYS = [7, 14, 21]
/** Whose whole window lies so near to the start is quick and tasted every day of it. */
const QUICK_DAYS = 10

/** What a steeping jar asks for, shaking apart. */
export function steepingSeries(story: Story): readonly Series[] {
  const entered = enteredDay(story.started)
  return [tasteSeries(story, entered), addSeries(story, entered), strainSeries(story.started, entered)].filter(
    (asked) => asked !== null,
  )
}

const plannedDay = (day: string | null): number | null => (day === null ? null : dayNumber(day))

/** An hour after the start of a jar whose plants are done within the day; null for any other. */
export function hourOf({ atMs, zone, plan }: Of<'started'>, which: 'min' | 'max'): Hour | null {
  if (!plan.isHours || plan.steepHours === null) return null
  const ms = atMs + plan.steepHours[which] * HOUR_MS
  return { ms, day: dayNumberAt(zone, ms) }
}

/** The days on which it is worth tasting, first and last; one day unless the plants are quick. */
export function tasteWindow({ day, plan }: Of<'started'>): readonly [first: number, last: number] | null {
  const [first, last] = [plannedDay(plan.tasteFrom), plannedDay(plan.strainBy)]
  if (first === null) return null
  return last !== null && last > first && last - dayNumber(day) <= QUICK_DAYS ? [first, last] : [first, first]
}

function tasteSeries({ started, happened }: Story, entered: number): Series | null {
  const taste = happened.findLast(({ kind }) => kind === 'tasted')
  const hour = hourOf(started, 'min')
  if (hour !== null) {
    const isSame = hour.ms === hourOf(started, 'max')?.ms
    const isOver = hour.ms < started.enteredMs || (taste !== undefined && taste.atMs >= hour.ms)
    return isSame || isOver ? null : series('taste', started, [hour.day], { hour })
  }
  const window = tasteWindow(started)
  if (window === null) return null
  const [first, last] = window
  const fromDay = taste === undefined ? first : Math.max(first, dayNumber(taste.day) + 1)
  const isOver = fromDay > last
  // Whoever enters a jar after the one day of it is asked the next morning.
  const until = last > first || isOver ? last : Math.max(last, entered + 1)
  const days: number[] = []
  for (let day = Math.max(fromDay, entered + 1); day <= until; day++) days.push(day)
  return series('taste', started, days, {
    byDay: started.plan.strainBy,
    ...(isOver ? {} : { fromDay }),
  })
}

function addSeries(story: Story, entered: number): Series | null {
  // Whoever enters a jar when the day has come is asked the next morning.
  const days = new Set(plantsToAdd(story).map(({ addOn }) => Math.max(dayNumber(addOn), entered + 1)))
  const later = [...days].sort((one, other) => one - other)
  return later.length === 0 ? null : series('add', story.started, later)
}

/** When the window opens, before it closes, then weekly; the morning after a jar was entered when it had opened. */
function strainSeries(started: Of<'started'>, entered: number): Series | null {
  const byDay = started.plan.strainBy
  const hour = hourOf(started, 'max')
  if (hour !== null) {
    const weekly = WEEKS_DAYS.map((days) => hour.day + days)
    if (hour.ms >= started.enteredMs) return series('strain', started, [hour.day, ...weekly], { hour, byDay })
    const later = weekly.filter((day) => day > entered + 1)
    return series('strain', started, [entered + 1, ...later], { byDay })
  }
  const window = strainWindow(started)
  if (window === null) return null
  const isShort = started.plan.strainFrom !== null && daysOf(window) <= SHORT_DAYS
  const days = strainDays(window, entered, isShort ? 0 : WARNED_DAYS)
  return series('strain', started, days, { byDay, fromDay: window.opens })
}

/** Two days before the last; on the last where the window is so short that this would be lost with its opening. */
const WARNED_DAYS = 2
const SHORT_DAYS = 3

export interface StrainWindow {
  readonly opens: number
  /** Null where the plan does not say. */
  readonly closes: number | null
}

/** Null where the plan knows neither end. Where it knows only the last day, the window opens two days before. */
export function strainWindow({ day, plan }: Of<'started'>): StrainWindow | null {
  const [opens, closes] = [plannedDay(plan.strainFrom), plannedDay(plan.strainBy)]
  if (opens !== null) return { opens, closes }
  if (closes === null) return null
  return { opens: Math.min(closes, Math.max(closes - WARNED_DAYS, dayNumber(day) + 1)), closes }
}

const daysOf = ({ opens, closes }: StrainWindow): number => (closes ?? Number.POSITIVE_INFINITY) - opens + 1

function strainDays({ opens, closes }: StrainWindow, entered: number, warnedDays: number): readonly number[] {
  const first = Math.max(opens, entered + 1)
  const warned = closes === null ? opens : Math.max(opens, closes - warnedDays)
  const last = Math.max(first, warned)
  const weekly = WEEKS_DAYS.map((days) => warned + days).filter((day) => day >= last + WEEK_DAYS)
  return [first, ...(warned > first ? [warned] : []), ...weekly]
}
