import { dayNumber } from '../../quantity/time/day-number.ts'
import type { Of, Story } from '../state/jar-state.ts'
import { movedByLatePlants } from '../state/late-plants.ts'
import { plantsToAdd } from '../state/later-plants.ts'
import type { DutyKind, ShakeRhythm } from './duty.ts'
import { type PutOff, putOffOf } from './put-off.ts'
import type { Hour } from './reminder-days.ts'
import { lastShakenDay, rhythmOf } from './shake-days.ts'
import { hourOf, strainWindow, tasteWindow } from './steeping-series.ts'
import { BOTTLE_DAYS, FILTER_DAYS, isFiltered, isSweetening, settlesFrom, wantsSyrup } from './strained-series.ts'

/** Something to do, now or later. Days are counted from 1 January 1970. */
export interface JarTask {
  readonly kind: DutyKind
  readonly since: number
  readonly by: number | null
  /** Of the first day, where it is not the whole of it. */
  readonly hour: Hour | null
  readonly isOverdue: boolean
}

export interface Now {
  readonly nowMs: number
  readonly today: number
}

/** The most pressing first. */
const ORDER: readonly DutyKind[] = ['add', 'strain', 'taste', 'sweeten', 'filter', 'bottle', 'shake', 'ready']

/**
 * What a jar asks for, each kind once: what can be done at an instant and what comes after it, said or not. A pause changes
 * nothing of it; what was put off comes on its day or at its hour.
 */
export function jarTasks(story: Story, shake: ShakeRhythm, now: Now): readonly JarTask[] {
  if (story.ended !== null) return []
  const tasks =
    story.strained === null ? steeping(movedByLatePlants(story), shake, now) : strained(story, story.strained, now)
  const putOff = stillPutOff(story, now)
  const asked = putOff === null ? tasks : tasks.map((each) => delayed(each, putOff))
  return asked.toSorted(
    (one, other) =>
      Number(other.isOverdue) - Number(one.isOverdue) || ORDER.indexOf(one.kind) - ORDER.indexOf(other.kind),
  )
}

export const isOpen = ({ since, hour }: JarTask, { nowMs, today }: Now): boolean =>
  hour === null ? since <= today : hour.ms <= nowMs

/** What was put off before the jar was strained or sweetened was another task. */
function stillPutOff(story: Story, { nowMs, today }: Now): PutOff | null {
  const putOff = putOffOf(story)
  const reached = story.sweetened ?? story.strained
  if (putOff === null || (reached !== null && reached.seq > putOff.seq)) return null
  return (putOff.untilMs === null ? today < putOff.untilDay : nowMs < putOff.untilMs) ? putOff : null
}

function delayed(task: JarTask, { untilDay, untilMs }: PutOff): JarTask {
  const isLater =
    task.since > untilDay || (task.since === untilDay && (untilMs === null || (task.hour?.ms ?? 0) > untilMs))
  if (task.kind === 'ready' || isLater) return task
  return { ...task, since: untilDay, hour: untilMs === null ? null : { ms: untilMs, day: untilDay } }
}

const task = (kind: DutyKind, since: number, rest: Partial<JarTask> = {}): JarTask => ({
  kind,
  since,
  by: null,
  hour: null,
  isOverdue: false,
  ...rest,
})

function steeping(story: Story, shake: ShakeRhythm, now: Now): readonly JarTask[] {
  const rhythm = rhythmOf(story, shake)
  const addOn = plantsToAdd(story).map((plant) => dayNumber(plant.addOn))
  const by = Math.min(...addOn)
  // What is waited for steeps as long as was planned, once it is in: nothing else is asked for before.
  const lateDays = addOn.length === 0 ? 0 : Math.max(0, now.today - by)
  const planned = [...strainTask(story.started, now), ...tasteTask(story, now)]
  const later = lateDays === 0 ? planned : planned.map((each) => waiting(each, lateDays))
  return [
    ...(addOn.length === 0 ? [] : [task('add', by, { by, isOverdue: now.today > by })]),
    ...later,
    ...(rhythm === null ? [] : [task('shake', rhythm(lastShakenDay(story)))]),
  ]
}

/** Counted from today, as it was from the day on which the plant was to go in. */
const waiting = (each: JarTask, days: number): JarTask => ({
  ...each,
  since: each.since + days,
  by: each.by === null ? null : each.by + days,
  hour: null,
  isOverdue: false,
})

function strainTask(started: Of<'started'>, { nowMs, today }: Now): readonly JarTask[] {
  const [hour, last] = [hourOf(started, 'min'), hourOf(started, 'max')]
  if (hour !== null && last !== null) {
    const isOverdue = last.ms > hour.ms ? nowMs > last.ms : today > last.day
    return [task('strain', hour.day, { by: last.day, hour, isOverdue })]
  }
  const window = strainWindow(started)
  if (window === null) return []
  const { opens, closes } = window
  return [task('strain', opens, { by: closes, isOverdue: closes !== null && today > closes })]
}

function tasteTask({ started, happened }: Story, { nowMs, today }: Now): readonly JarTask[] {
  const tasted = happened.findLast(({ kind }) => kind === 'tasted')
  const [hour, last] = [hourOf(started, 'min'), hourOf(started, 'max')]
  if (hour !== null && last !== null) {
    const isOver = hour.ms === last.ms || nowMs > last.ms || (tasted !== undefined && tasted.atMs >= hour.ms)
    return isOver ? [] : [task('taste', hour.day, { by: last.day, hour })]
  }
  const window = tasteWindow(started)
  if (window === null) return []
  const [first, until] = window
  const isQuick = until > first
  const tastedDay = tasted === undefined ? Number.NEGATIVE_INFINITY : dayNumber(tasted.day)
  const since = isQuick && tastedDay >= today ? Math.max(first, tastedDay + 1) : first
  const closes = strainWindow(started)?.closes ?? Number.POSITIVE_INFINITY
  const isOver = today > closes || (isQuick ? since > until : tastedDay >= first)
  return isOver ? [] : [task('taste', since, { by: isQuick ? until : null })]
}

/** Late only where the plan says that there is syrup to come. */
function sweetenTask(story: Story, { day }: Of<'strained'>, { today }: Now): readonly JarTask[] {
  if (!isSweetening(story)) return []
  const since = dayNumber(day) + 1
  return [task('sweeten', since, { isOverdue: today > since && wantsSyrup(story) === true })]
}

function strained(story: Story, entry: Of<'strained'>, now: Now): readonly JarTask[] {
  const { bottled, readyOn, happened } = story
  const settles = settlesFrom(story)
  const settled = settles === null || bottled !== null ? null : dayNumber(settles.day)
  const isOpened = happened.some(({ kind }) => kind === 'opened')
  return [
    ...sweetenTask(story, entry, now),
    ...(settled === null || isFiltered(story) ? [] : [task('filter', settled + FILTER_DAYS)]),
    ...(settled === null ? [] : [task('bottle', settled + BOTTLE_DAYS)]),
    ...(readyOn === null || isOpened ? [] : [task('ready', dayNumber(readyOn))]),
  ]
}
