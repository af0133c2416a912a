import { dayNumber } from '../../quantity/time/day-number.ts'
import type { Entry } from '../entry/entry.ts'
import { enteredDay } from './duty.ts'
import type { Hour, TaskWindow } from './windows.ts'

/** The days on which reminders speak of one window. Days are counted from 1 January 1970. */
export interface ReminderDays extends Pick<TaskWindow, 'kind' | 'since' | 'byDay'> {
  /** In order, each once. */
  readonly days: readonly number[]
  /** The day from which it can be done; on that of its entry nobody is reminded who did not put it off. */
  readonly fromDay: number
  /** The first is said at this hour of its day instead of the morning. */
  readonly hour: Hour | null
  /** Said on this day at the earliest, under the key of its own day. */
  readonly heldUntilDay: number
  /** And not before this instant. */
  readonly heldUntilMs: number
  /** The day whose reminder was put off to an hour, by which entry: it is another than the one said that morning. */
  readonly again: { readonly day: number; readonly seq: number } | null
}

type Said = Pick<ReminderDays, 'days'> & Partial<Pick<ReminderDays, 'fromDay' | 'hour'>>

const WEEKS_DAYS = [7, 14, 21]
const WEEK_DAYS = 7

/** The day from which what follows an entry is counted: its own, or that on which it was entered late. */
const knownDay = (entry: Entry): number => Math.max(dayNumber(entry.day), enteredDay(entry))

/** When a window is spoken of, before anybody puts it off. `shakeDays`: those of shaking, which its answers decide. */
export function reminderDays(window: TaskWindow, shakeDays: readonly number[]): ReminderDays {
  const { kind, since, byDay } = window
  return {
    kind,
    since,
    byDay,
    fromDay: Number.POSITIVE_INFINITY,
    hour: null,
    heldUntilDay: Number.NEGATIVE_INFINITY,
    heldUntilMs: Number.NEGATIVE_INFINITY,
    again: null,
    ...saidOn(window, shakeDays),
  }
}

function saidOn(window: TaskWindow, shakeDays: readonly number[]): Said {
  const { since, opens, rhythm } = window
  const entered = enteredDay(since)
  switch (rhythm.of) {
    case 'tasting':
      return window.hours === null ? tasteDays(window, rhythm, entered) : tasteHour(window.hours[0], rhythm, since)
    case 'straining':
      return window.hours === null
        ? { days: strainDays(window, rhythm, entered), fromDay: opens }
        : strainHours(window.hours[1], since, entered)
    case 'planned':
      // Whoever enters a jar when the day has come is asked the next morning.
      return { days: [...new Set(rhythm.days.map((day) => Math.max(day, entered + 1)))].sort((a, b) => a - b) }
    case 'counted':
      return { days: rhythm.afterDays.map((day) => knownDay(since) + day) }
    case 'news':
      return { days: opens > entered ? [opens] : [] }
    case 'shaking':
      return { days: shakeDays }
  }
}

type Tasting = Extract<TaskWindow['rhythm'], { readonly of: 'tasting' }>

function tasteDays({ opens, closes }: TaskWindow, { answered }: Tasting, entered: number): Said {
  const last = closes ?? opens
  const fromDay = answered === null ? opens : Math.max(opens, dayNumber(answered.day) + 1)
  const isOver = fromDay > last
  // Whoever enters a jar after the one day of it is asked the next morning.
  const until = closes !== null || isOver ? last : Math.max(last, entered + 1)
  const days: number[] = []
  for (let day = Math.max(fromDay, entered + 1); day <= until; day++) days.push(day)
  return isOver ? { days } : { days, fromDay }
}

function tasteHour(hour: Hour, { answered }: Tasting, { enteredMs }: Entry): Said {
  const isOver = hour.ms < enteredMs || (answered !== null && answered.atMs >= hour.ms)
  return isOver ? { days: [] } : { days: [hour.day], hour }
}

/** When the window opens, before it closes, then weekly; the morning after a jar was entered when it had opened. */
function strainDays(
  { opens, closes }: TaskWindow,
  { warnedDays }: { readonly warnedDays: number },
  entered: number,
): readonly number[] {
  const first = Math.max(opens, entered + 1)
  const warned = closes === null ? opens : Math.max(opens, closes - warnedDays)
  const last = Math.max(first, warned)
  const weekly = WEEKS_DAYS.map((days) => warned + days).filter((day) => day >= last + WEEK_DAYS)
  return [first, ...(warned > first ? [warned] : []), ...weekly]
}

function strainHours(hour: Hour, { enteredMs }: Entry, entered: number): Said {
  const weekly = WEEKS_DAYS.map((days) => hour.day + days)
  if (hour.ms >= enteredMs) return { days: [hour.day, ...weekly], hour }
  return { days: [entered + 1, ...weekly.filter((day) => day > entered + 1)] }
}
