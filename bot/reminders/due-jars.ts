import { type Story, storyOf } from '../../core/jar/state/jar-state.ts'
import { movedByLatePlants } from '../../core/jar/state/late-plants.ts'
import { agenda, type Task } from '../../core/jar/tasks/agenda.ts'
import { allDuties } from '../../core/jar/tasks/duties.ts'
import { type Duty, type DutyKind, type DutySettings, dutyKey } from '../../core/jar/tasks/duty.ts'
import { enteredDay } from '../../core/jar/tasks/reminder-days.ts'
import type { IsoDay } from '../../core/quantity/time/calendar-day.ts'
import { isoOf } from '../../core/quantity/time/day-number.ts'
import { dayNumberAt, instantOf } from '../../core/quantity/time/zone.ts'
import { dutySettings } from '../../store/due.ts'
import type { Jar, Nudge, Person } from '../../store/person.ts'
import { believed, saidBy } from '../../store/told-ahead.ts'
import type { Now } from './prepare-nudge.ts'

/** A jar and what a nudge says of it, each kind once: missed days are one. */
export interface Asked {
  readonly jarId: string
  readonly story: Story
  readonly entries: Jar['entries']
  readonly duty: Pick<Duty, 'kind' | 'day' | 'by'>
  readonly isLast: boolean
  /** No reminder of its own: it can be done today, and a nudge goes out anyway. */
  readonly isAside: boolean
}

/** The order in which a nudge speaks. */
export const KINDS: readonly DutyKind[] = ['shake', 'taste', 'add', 'strain', 'sweeten', 'filter', 'bottle', 'ready']

/** The last day for it, on which its jar is to be strained at the latest. */
const lastDayOf = ({ story }: Asked): IsoDay => movedByLatePlants(story).started.plan.strainBy ?? '9999-12-31'

/** What has the least time left first. */
export const byLastDay = (asked: readonly Asked[]): readonly Asked[] =>
  asked.toSorted((one, other) => Number(lastDayOf(one) > lastDayOf(other)) - Number(lastDayOf(one) < lastDayOf(other)))

/** What a nudge asks for, and what else can be done today that is said with it. */
export function askedOf(person: Person, nudge: Nudge, { nowMs, assumedZone }: Now): readonly Asked[] {
  const settings = dutySettings(person.settings, assumedZone)
  const today = dayNumberAt(settings.zone, nowMs)
  const morningMs = instantOf(settings.zone, today, settings.atMinutes)
  const jars = person.jars.map((jar) => ({ ...jar, entries: believed(jar.entries, nowMs) }))
  const named = jars.map((jar) => ({ jar, due: remindersOf(jar, nudge, settings) }))
  const isMorning = named.some(({ due }) => due.some(({ dueMs }) => dueMs === morningMs))
  return named.flatMap(({ jar: { id: jarId, entries, ...told }, due }) => {
    const story = storyOf(entries)
    if (story === null) return []
    const of = { jarId, story, entries }
    const said = saidBy(told, nowMs)
    const isNew = isMorning && enteredDay(story.started) === today
    const isSaid = (kind: DutyKind): boolean =>
      due.some((duty) => duty.kind === kind) || said.has(dutyKey(kind, isoOf(today), null))
    const asides = agenda(entries, settings, nowMs).today.filter(
      (task) => !isSaid(task.kind) && isSaidAside(task, nowMs, due.length > 0, isNew),
    )
    return oneThing([
      ...lastOfKinds(due).map((each) => ({ ...of, ...each, isAside: false })),
      ...asides.map(({ kind, byDay: by }) => ({
        ...of,
        duty: { kind, day: isoOf(today), by },
        isLast: false,
        isAside: true,
      })),
    ])
  })
}

/** Nothing is tasted for or strained of which a plant has still to go in. */
const oneThing = (asked: readonly Asked[]): readonly Asked[] =>
  asked.some(({ duty }) => duty.kind === 'add')
    ? asked.filter(({ duty }) => duty.kind !== 'strain' && duty.kind !== 'taste')
    : asked

function remindersOf({ id, entries }: Jar, { duties }: Nudge, settings: DutySettings): readonly Duty[] {
  const keys = new Set(duties.filter(({ jarId }) => jarId === id).map(({ key }) => key))
  return keys.size === 0 ? [] : allDuties(entries, settings).filter(({ key }) => keys.has(key))
}

const lastOfKinds = (due: readonly Duty[]): readonly Pick<Asked, 'duty' | 'isLast'>[] =>
  KINDS.flatMap((kind) => {
    const same = due.filter((duty) => duty.kind === kind)
    const duty = same.at(-1)
    return duty === undefined ? [] : [{ duty, isLast: same.some(({ isLast }) => isLast) }]
  })

/**
 * Straining, tasting and what is to be added are named with their jar as long as they are open. A jar entered today that was begun before has
 * no reminders until tomorrow. What comes at an hour of its own is asked for at the last of its hours.
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
