import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import { dayNumber, isoOf } from '../../quantity/time/day-number.ts'
import { dayNumberAt, instantOf, minutesAt } from '../../quantity/time/zone.ts'
import type { JarEntry } from '../entry/entry.ts'
import { type Story, storyOf } from '../state/jar-state.ts'
import { movedByLatePlants } from '../state/late-plants.ts'
import type { DutyKind, DutySettings } from './duty.ts'
import { isOpen, type JarTask, jarTasks } from './jar-tasks.ts'
import { strainWindow } from './steeping-series.ts'

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
  const story = storyOf(entries)
  if (story === null) return NO_JAR
  const { started, ended } = story
  const today = dayNumberAt(settings.zone, nowMs)
  const now = { nowMs, today }
  const tasks = jarTasks(story, settings.shake, now)
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

const taskOf = ({ kind, since, by, hour, isOverdue }: JarTask, { zone, atMinutes }: DutySettings): Task => ({
  kind,
  sinceDay: isoOf(hour === null ? since : dayNumberAt(zone, hour.ms)),
  atMinutes: hour === null ? null : minutesAt(zone, hour.ms),
  byDay: by === null ? null : isoOf(by),
  dueMs: hour?.ms ?? instantOf(zone, since, atMinutes),
  state: isOverdue ? 'overdue' : 'due',
})

/** Of what comes at once the most pressing first, but a taste before the straining that it decides. */
const bySoonest = (one: Task, other: Task): number =>
  one.dueMs - other.dueMs || Number(other.kind === 'taste') - Number(one.kind === 'taste')

function goalOf(story: Story): number | null {
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
