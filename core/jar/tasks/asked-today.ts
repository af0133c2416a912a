import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import { isoOf } from '../../quantity/time/day-number.ts'
import { dayNumberAt } from '../../quantity/time/zone.ts'
import type { JarEntry } from '../entry/entry.ts'
import { type JarState, jarStateOf } from '../state/jar-state.ts'
import { movedByLatePlants } from '../state/late-plants.ts'
import { agenda, type Task } from './agenda.ts'
import { type Duty, type DutyKind, type DutySettings, dutyKey, enteredDay } from './duty.ts'

/** What a nudge says of a jar, each kind once: missed days are one. */
export interface AskedOfJar {
  readonly story: JarState
  readonly duty: Pick<Duty, 'kind' | 'day' | 'by'>
  readonly isLast: boolean
  /** No reminder of its own: it can be done today, and a nudge goes out anyway. */
  readonly isAside: boolean
}

/** What is known of the nudge that goes out. */
export interface Saying {
  /** The reminders of the jar that it carries. */
  readonly due: readonly Duty[]
  /** Keys of those that were said before. */
  readonly said: ReadonlySet<string>
  /** Whether it is the one of the morning. */
  readonly isMorning: boolean
}

/** The order in which a nudge speaks. */
export const SPOKEN_ORDER: readonly DutyKind[] = [
  'shake',
  'taste',
  'add',
  'strain',
  'sweeten',
  'filter',
  'bottle',
  'ready',
  'drink',
]

/** A jar's last day is the one on which it has to be strained at the latest. */
const lastDayOf = ({ story }: AskedOfJar): IsoDay => movedByLatePlants(story).started.days.strainBy ?? '9999-12-31'

/** What has the least time left first. */
export const byLastDay = <Asked extends AskedOfJar>(asked: readonly Asked[]): readonly Asked[] =>
  asked.toSorted((one, other) => Number(lastDayOf(one) > lastDayOf(other)) - Number(lastDayOf(one) < lastDayOf(other)))

/** What a nudge asks for in a jar, and what else can be done there today that is said with it. */
export function askedToday(
  entries: readonly JarEntry[],
  { due, said, isMorning }: Saying,
  settings: DutySettings,
  nowMs: number,
): readonly AskedOfJar[] {
  const story = jarStateOf(entries)
  if (story === null) return []
  const today = dayNumberAt(settings.zone, nowMs)
  const isNew = isMorning && enteredDay(story.started) === today
  const isSaid = (kind: DutyKind): boolean =>
    due.some((duty) => duty.kind === kind) || said.has(dutyKey(kind, isoOf(today), null))
  const asides = agenda(entries, settings, nowMs).today.filter(
    (task) => !isSaid(task.kind) && isSaidAside(task, nowMs, due.length > 0, isNew),
  )
  return oneThing([
    ...lastOfKinds(due).map((each) => ({ story, ...each, isAside: false })),
    ...asides.map(({ kind, byDay: by }) => ({
      story,
      duty: { kind, day: isoOf(today), by },
      isLast: false,
      isAside: true,
    })),
  ])
}

/** A jar that still lacks a plant is neither tasted nor strained. */
const oneThing = (asked: readonly AskedOfJar[]): readonly AskedOfJar[] =>
  asked.some(({ duty }) => duty.kind === 'add')
    ? asked.filter(({ duty }) => duty.kind !== 'strain' && duty.kind !== 'taste')
    : asked

const lastOfKinds = (due: readonly Duty[]): readonly Pick<AskedOfJar, 'duty' | 'isLast'>[] =>
  SPOKEN_ORDER.flatMap((kind) => {
    const same = due.filter((duty) => duty.kind === kind)
    const duty = same.at(-1)
    return duty === undefined ? [] : [{ duty, isLast: same.some(({ isLast }) => isLast) }]
  })

/**
 * Straining, tasting and what is to be added are named with their jar as long as they are open. A jar entered today that
 * was begun before has no reminders until tomorrow. What comes at an hour of its own is asked for at the last of its hours.
 */
function isSaidAside(
  { kind, atMinutes, dueMs, state }: Task,
  nowMs: number,
  isNamed: boolean,
  isNew: boolean,
): boolean {
  if (dueMs > nowMs) return false
  if (kind === 'shake') return isNew
  if (kind === 'strain') return (isNamed || isNew) && (atMinutes === null || state === 'overdue')
  return (kind === 'taste' || kind === 'add') && (isNamed || isNew)
}
