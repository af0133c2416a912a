import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import { dayNumber, isoOf } from '../../quantity/time/day-number.ts'
import { dayNumberAt, instantOf, minutesAt } from '../../quantity/time/zone.ts'
import type { JarEntry } from '../entry/entry.ts'
import { type JarState, jarStateOf } from '../state/jar-state.ts'
import { movedByLatePlants } from '../state/late-plants.ts'
import type { DutyKind, DutySettings } from './duty.ts'
import { type PutOff, putOffOf } from './put-off.ts'
import { type Hour, strainWindow, type TaskWindow, windowsOf } from './windows.ts'

/** What can or should be done with a jar, whether or not a reminder was said. */
export interface Task {
  readonly kind: DutyKind
  /** The day from which it can be done, or until which it was put off. */
  readonly sinceDay: IsoDay
  /** Minutes after that day's midnight, where it comes at an hour of its own. */
  readonly atMinutes: number | null
  /** The last day for it, where there is one. */
  readonly byDay: IsoDay | null
  /** Its hour, or that of reminders on its day. */
  readonly dueMs: number
  readonly state: 'due' | 'overdue' | 'coming'
}

export interface Agenda {
  /** The most pressing first; none of them `coming`. */
  readonly today: readonly Task[]
  /** The rest, `coming`, the soonest first; no kind of it is in `today`. What reminders say, and when, is another matter. */
  readonly coming: readonly Task[]
  /** The first that is coming; null where there is none. */
  readonly next: Task | null
  /** 1 on the day the jar was started; stops where it ended. */
  readonly day: number
  /** The `day` on which the present stage reaches its goal: straining, then the first glass; null where it has none. */
  readonly ofDays: number | null
}

const NO_JAR: Agenda = { today: [], coming: [], next: null, day: 1, ofDays: null }

/** What a jar asks for on the day that it is now. A jar whose start was undone asks for nothing. */
export function agenda(entries: readonly JarEntry[], settings: DutySettings, nowMs: number): Agenda {
  const story = jarStateOf(entries)
  if (story === null) return NO_JAR
  const { started, ended } = story
  const today = dayNumberAt(settings.zone, nowMs)
  const now = { nowMs, today }
  const tasks = standingTasks(story, settings, now)
  const coming = tasks
    .filter((task) => !isOpen(task, now))
    .map((task) => ({ ...taskOf(task, settings), state: 'coming' as const }))
    .sort(bySoonest)
  const [startDay, goal] = [dayNumber(started.day), goalOf(story)]
  const lastDay = ended === null ? today : Math.min(today, dayNumber(ended.day))
  return {
    today: tasks.filter((task) => isOpen(task, now)).map((task) => taskOf(task, settings)),
    coming,
    next: coming[0] ?? null,
    day: Math.max(1, lastDay - startDay + 1),
    ofDays: goal === null ? null : Math.max(1, goal - startDay + 1),
  }
}

interface Now {
  readonly nowMs: number
  readonly today: number
}

/** What stands in a window now. */
interface StandingTask {
  readonly kind: DutyKind
  readonly since: number
  readonly by: number | null
  /** When it opens on its first day; null where the whole day counts. */
  readonly hour: Hour | null
  readonly isOverdue: boolean
}

/** The most pressing first. */
const ORDER: readonly DutyKind[] = ['add', 'strain', 'taste', 'sweeten', 'filter', 'bottle', 'shake', 'ready']

/**
 * The windows that are open or still to come, each kind once, said or not. A pause changes nothing of it; what was put off
 * comes on its day or at its hour.
 */
function standingTasks(story: JarState, { shake }: DutySettings, now: Now): readonly StandingTask[] {
  // What should be drunk soon is a shelf's matter, and no job of the jar.
  const windows = windowsOf(story, shake).filter(({ kind }) => kind !== 'drink')
  const add = windows.find(({ kind }) => kind === 'add')
  // A late plant steeps as long as was planned once it is in, so tasting and straining wait for it.
  const lateDays = add === undefined ? 0 : Math.max(0, now.today - add.opens)
  const strainBy = windows.find(({ kind }) => kind === 'strain')?.closes ?? null
  const tasks = windows.flatMap((window) => {
    const task = standing(window, strainBy, now)
    if (task === null) return []
    return lateDays > 0 && (window.kind === 'taste' || window.kind === 'strain') ? [waiting(task, lateDays)] : [task]
  })
  const putOff = stillPutOff(story, now)
  const asked = putOff === null ? tasks : tasks.map((each) => delayed(each, putOff))
  return asked.toSorted(
    (one, other) =>
      Number(other.isOverdue) - Number(one.isOverdue) || ORDER.indexOf(one.kind) - ORDER.indexOf(other.kind),
  )
}

/** Null where the window has closed, or is answered. `strainBy`: the last day for straining, after which nobody tastes. */
function standing(window: TaskWindow, strainBy: number | null, now: Now): StandingTask | null {
  const { kind, opens, closes, hours, rhythm } = window
  const since = rhythm.of === 'tasting' && hours === null ? tasteSince(window, now.today) : opens
  if (rhythm.of === 'tasting') {
    const answeredMs = rhythm.answered?.atMs ?? Number.NEGATIVE_INFINITY
    const isOver =
      hours === null
        ? now.today > (strainBy ?? Number.POSITIVE_INFINITY) || since > (closes ?? opens)
        : now.nowMs > hours[1].ms || answeredMs >= hours[0].ms
    if (isOver) return null
  }
  return { kind, since, by: closes, hour: hours?.[0] ?? null, isOverdue: isLate(window, now) }
}

/** Who tastes every day has tasted for today; who tastes once has tasted for good, from the first day on. */
function tasteSince({ opens, rhythm }: TaskWindow, today: number): number {
  if (rhythm.of !== 'tasting' || rhythm.answered === null) return opens
  const answeredDay = dayNumber(rhythm.answered.day)
  return !rhythm.isDaily || answeredDay >= today ? Math.max(opens, answeredDay + 1) : opens
}

function isLate({ hours, lateAfter }: TaskWindow, { nowMs, today }: Now): boolean {
  if (lateAfter === null) return false
  if (hours === null) return today > lateAfter
  const [first, last] = hours
  return last.ms > first.ms ? nowMs > last.ms : today > last.day
}

/** Days are counted from today as they were from the day on which the plant was to go in. */
const waiting = (each: StandingTask, days: number): StandingTask => ({
  ...each,
  since: each.since + days,
  by: each.by === null ? null : each.by + days,
  hour: null,
  isOverdue: false,
})

const isOpen = ({ since, hour }: StandingTask, { nowMs, today }: Now): boolean =>
  hour === null ? since <= today : hour.ms <= nowMs

/** What was put off before the jar was strained or sweetened was another task. */
function stillPutOff(story: JarState, { nowMs, today }: Now): PutOff | null {
  const putOff = putOffOf(story)
  const reached = story.sweetened ?? story.strained
  if (putOff === null || (reached !== null && reached.seq > putOff.seq)) return null
  return (putOff.untilMs === null ? today < putOff.untilDay : nowMs < putOff.untilMs) ? putOff : null
}

function delayed(task: StandingTask, { untilDay, untilMs }: PutOff): StandingTask {
  const isLater =
    task.since > untilDay || (task.since === untilDay && (untilMs === null || (task.hour?.ms ?? 0) > untilMs))
  if (task.kind === 'ready' || isLater) return task
  return { ...task, since: untilDay, hour: untilMs === null ? null : { ms: untilMs, day: untilDay } }
}

const taskOf = ({ kind, since, by, hour, isOverdue }: StandingTask, { zone, atMinutes }: DutySettings): Task => ({
  kind,
  sinceDay: isoOf(hour === null ? since : dayNumberAt(zone, hour.ms)),
  atMinutes: hour === null ? null : minutesAt(zone, hour.ms),
  byDay: by === null ? null : isoOf(by),
  dueMs: hour?.ms ?? instantOf(zone, since, atMinutes),
  state: isOverdue ? 'overdue' : 'due',
})

/** The most pressing of what comes at once goes first, but a taste comes before the straining that it decides. */
const bySoonest = (one: Task, other: Task): number =>
  one.dueMs - other.dueMs || Number(other.kind === 'taste') - Number(one.kind === 'taste')

function goalOf(story: JarState): number | null {
  const { strained, ended, readyOn, happened } = story
  if (ended !== null) return null
  if (strained !== null) {
    const opened = happened.find(({ kind }) => kind === 'opened')
    const days = [readyOn, opened?.day ?? null].filter((day) => day !== null)
    return days.length === 0 ? null : Math.min(...days.map(dayNumber))
  }
  const window = strainWindow(movedByLatePlants(story).started)
  return window === null ? null : (window.closes ?? window.opens)
}
