import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import { dayNumber } from '../../quantity/time/day-number.ts'
import { dayNumberAt } from '../../quantity/time/zone.ts'
import type { Entry } from '../entry/entry.ts'
import { bestUntilIfItKeeps } from '../state/best-until.ts'
import { bottlesLeft } from '../state/bottle-stock.ts'
import type { JarState, Of } from '../state/jar-state.ts'
import { movedByLatePlants } from '../state/late-plants.ts'
import { plantsToAdd } from '../state/later-plants.ts'
import { isSweetening, settlesFrom, wantsSyrup } from '../state/syrup-wanted.ts'
import { QUICK_DAYS } from '../state/tastes-right.ts'
import type { DutyKind, ShakeRhythm } from './duty.ts'
import { lastAnswer, lastShakenDay, type NextShake, nextShakeOf } from './shake-days.ts'

/** An instant and the day it falls on. */
export interface Hour {
  readonly ms: number
  readonly day: number
}

/** From when until when something can be done with a jar, and how it is said. Days are counted from 1 January 1970. */
export interface TaskWindow {
  readonly kind: DutyKind
  /** The entry that gives rise to it: no reminder of it falls due before that was entered. */
  readonly since: Entry
  readonly opens: number
  /** The last day; null where there is none. */
  readonly closes: number | null
  /** The first and the last hour, of plants that are done within the day. */
  readonly hours: readonly [first: Hour, last: Hour] | null
  /** From the day after on it is late; null where nobody is late. */
  readonly lateAfter: number | null
  /** The last day that reminders name; null where they name none. */
  readonly byDay: IsoDay | null
  readonly rhythm: WindowRhythm
}

/** On which days reminders speak of a window. */
export type WindowRhythm =
  /** Every day of it until it is answered, or once where it is one day: a tasting. */
  | { readonly of: 'tasting'; readonly isDaily: boolean; readonly answered: Entry | null }
  /** When it opens, before it closes, then weekly. */
  | { readonly of: 'straining'; readonly warnedDays: number }
  /** On days that the plan names. */
  | { readonly of: 'planned'; readonly days: readonly number[] }
  /** Days after the entry, or after the day on which it became known. */
  | { readonly of: 'counted'; readonly afterDays: readonly number[] }
  /** Once, as news: not where the day had passed when it became known. */
  | { readonly of: 'news' }
  | { readonly of: 'shaking'; readonly next: NextShake }

/** Two days before the last a reminder warns; in a window no longer than three that is lost with its opening. Judgement. */
const WARNED_DAYS = 2
const SHORT_DAYS = 3
/** Reminders from straining on: the next day, then weekly. The syrup itself may go in at once, when it is cool. */
const SWEETEN_DAYS = [1, 8, 15]
/** Sugar on strained fruit has drawn what it draws in a week or two. Common practice, no source. */
const FRUIT_DAYS = [7, 14]
/** From the last syrup, or from straining where none is wanted, until what clouds it has settled. Common practice, no source. */
const BOTTLE_DAYS = 3
/** Weeks to drink or give away what is left before it is past its best. Judgement. */
const DRINK_DAYS = 28
const HOUR_MS = 3_600_000

/**
 * Everything that the stage of a running jar gives to do. A jar that has ended gives nothing. Whether what is to be drunk up
 * keeps as long as that is not looked into: `isOwed` does.
 */
export function windowsOf(story: JarState, shake: ShakeRhythm): readonly TaskWindow[] {
  if (story.ended !== null) return []
  return story.strained === null ? steeping(story, shake) : strained(story, story.strained)
}

const plannedDay = (day: string | null): number | null => (day === null ? null : dayNumber(day))

function steeping(story: JarState, shake: ShakeRhythm): readonly TaskWindow[] {
  const moved = movedByLatePlants(story)
  const next = nextShakeOf(story, shake)
  return [
    ...(next === null ? [] : [shakeWindow(story, next)]),
    ...[tasteWindow(moved), addTask(moved), strainTask(moved.started)].filter((window) => window !== null),
  ]
}

const shakeWindow = (story: JarState, next: NextShake): TaskWindow => ({
  kind: 'shake',
  since: lastAnswer(story),
  opens: next(lastShakenDay(story)),
  closes: null,
  hours: null,
  lateAfter: null,
  byDay: null,
  rhythm: { of: 'shaking', next },
})

/** The first and last hour of a jar whose plants are done within the day; null of any other. */
function hoursOf({ atMs, zone, days }: Of<'started'>): TaskWindow['hours'] {
  const { isHours, steepHours } = days
  if (!isHours || steepHours === null) return null
  const hourAt = (hours: number): Hour => {
    const ms = atMs + hours * HOUR_MS
    return { ms, day: dayNumberAt(zone, ms) }
  }
  return [hourAt(steepHours.min), hourAt(steepHours.max)]
}

/** When it is tasted; null where nothing tells it. */
export function tasteWindow({ started, happened }: JarState): TaskWindow | null {
  const hours = hoursOf(started)
  const answered = happened.findLast(({ kind }) => kind === 'tasted') ?? null
  const base = { kind: 'taste', since: started, hours, lateAfter: null } as const
  if (hours !== null) {
    const [first, last] = hours
    const rhythm = { of: 'tasting', isDaily: false, answered } as const
    return first.ms === last.ms ? null : { ...base, opens: first.day, closes: last.day, byDay: null, rhythm }
  }
  const [opens, closes] = [plannedDay(started.days.tasteFrom), plannedDay(started.days.strainBy)]
  if (opens === null) return null
  const isDaily = closes !== null && closes > opens && closes - dayNumber(started.day) <= QUICK_DAYS
  const rhythm = { of: 'tasting', isDaily, answered } as const
  return { ...base, opens, closes: isDaily ? closes : null, byDay: started.days.strainBy, rhythm }
}

function addTask(story: JarState): TaskWindow | null {
  const days = plantsToAdd(story).map(({ addOn }) => dayNumber(addOn))
  if (days.length === 0) return null
  const opens = Math.min(...days)
  const rhythm = { of: 'planned', days } as const
  return { kind: 'add', since: story.started, opens, closes: opens, hours: null, lateAfter: opens, byDay: null, rhythm }
}

type StrainWindow = Pick<TaskWindow, 'opens' | 'closes'>

/** When straining is planned; null where neither end is known. Where it knows only the last day, the window opens two days before. */
export function strainWindow({ day, days }: Of<'started'>): StrainWindow | null {
  const [opens, closes] = [plannedDay(days.strainFrom), plannedDay(days.strainBy)]
  if (opens !== null) return { opens, closes }
  if (closes === null) return null
  return { opens: Math.min(closes, Math.max(closes - WARNED_DAYS, dayNumber(day) + 1)), closes }
}

function strainTask(started: Of<'started'>): TaskWindow | null {
  const hours = hoursOf(started)
  const window = hours === null ? strainWindow(started) : { opens: hours[0].day, closes: hours[1].day }
  if (window === null) return null
  const { opens, closes } = window
  const isShort = started.days.strainFrom !== null && closes !== null && closes - opens + 1 <= SHORT_DAYS
  const rhythm = { of: 'straining', warnedDays: isShort ? 0 : WARNED_DAYS } as const
  return {
    kind: 'strain',
    since: started,
    opens,
    closes,
    hours,
    lateAfter: closes,
    byDay: started.days.strainBy,
    rhythm,
  }
}

/** Opens the first of `afterDays` days after an entry, and stays open. */
function counted(kind: DutyKind, since: Entry, afterDays: readonly number[]): TaskWindow {
  const opens = dayNumber(since.day) + afterDays[0]!
  const rhythm = { of: 'counted', afterDays } as const
  return { kind, since, opens, closes: null, hours: null, lateAfter: null, byDay: null, rhythm }
}

/** From the day of straining on; without a known target it is asked once whether syrup is to come, and nobody is late. */
function sweetenTask(strained: Of<'strained'>, isSyrupPlanned: boolean): TaskWindow {
  const [first = 1] = SWEETEN_DAYS
  const task = counted('sweeten', strained, isSyrupPlanned ? SWEETEN_DAYS : [first])
  return { ...task, opens: dayNumber(strained.day), lateAfter: isSyrupPlanned ? task.opens : null }
}

const NEWS = { hours: null, lateAfter: null, rhythm: { of: 'news' } } as const

/** Nothing is asked for before the syrup is in. Filtering is offered where it helps, and never owed. */
function strained(story: JarState, entry: Of<'strained'>): readonly TaskWindow[] {
  const { bottled, sweetened, onFruit, readyOn, happened } = story
  const isSyrupPlanned = wantsSyrup(story) === true
  const settles = bottled === null && onFruit === null ? settlesFrom(story) : null
  const readySince = happened.some(({ kind }) => kind === 'opened') ? null : (sweetened ?? bottled)
  const ready = { ...NEWS, kind: 'ready', closes: null, byDay: null } as const
  return [
    ...(onFruit === null ? [] : [counted('sweeten', onFruit, FRUIT_DAYS)]),
    ...(onFruit === null && isSweetening(story) ? [sweetenTask(entry, isSyrupPlanned)] : []),
    ...(settles === null ? [] : [counted('bottle', settles, [BOTTLE_DAYS])]),
    ...(readyOn === null || readySince === null ? [] : [{ ...ready, since: readySince, opens: dayNumber(readyOn) }]),
    ...(bottled === null ? [] : drinkTask(story, bottled)),
  ]
}

/** Bottles that nobody has opened or given away, from some weeks before they are past their best. */
function drinkTask(story: JarState, bottled: Of<'bottled'>): readonly TaskWindow[] {
  const byDay = bottlesLeft(story) === 0 ? null : bestUntilIfItKeeps(story)
  if (byDay === null) return []
  const closes = dayNumber(byDay)
  const opens = Math.max(closes - DRINK_DAYS, dayNumber(bottled.day))
  return [{ ...NEWS, kind: 'drink', since: bottled, opens, closes, byDay }]
}
