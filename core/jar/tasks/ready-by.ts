import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import { dayNumber, isoOf } from '../../quantity/time/day-number.ts'
import { SWEETEN_DAYS } from '../../recipe/plan/schedule.ts'
import type { JarState } from '../state/jar-state.ts'
import { readyOf } from './ready-day.ts'
import { strainWindow } from './windows.ts'

/** Whether a jar can be drunk by a day, and when it can be; `step` is to be done by its day for that. */
export type ReadyBy =
  | { readonly kind: 'ready' }
  | { readonly kind: 'unknown' }
  | { readonly kind: 'on_time' | 'late'; readonly ready: IsoDay }
  | { readonly kind: 'if_done'; readonly step: 'strain' | 'sweeten'; readonly doneBy: IsoDay }

const isBefore = (one: IsoDay, other: IsoDay): boolean => one < other

/** As the plan has it; where that is too late, whether the next step in good time brings it about. Rests are never cut short. */
export function readyBy(story: JarState, by: IsoDay, today: IsoDay): ReadyBy {
  const { started, strained } = story
  const { restDays } = started.days
  const ready = readyOf(story, today)
  if (ready !== null && !isBefore(today, ready)) return { kind: 'ready' }
  if (ready !== null && !isBefore(by, ready)) return { kind: 'on_time', ready }
  if (story.readyOn !== null) return { kind: 'late', ready: story.readyOn }
  if (restDays === null) return { kind: 'unknown' }
  if (strained !== null) {
    const doneBy = isoOf(dayNumber(by) - restDays)
    if (!isBefore(doneBy, today)) return { kind: 'if_done', step: 'sweeten', doneBy }
    return { kind: 'late', ready: isoOf(dayNumber(today) + restDays) }
  }
  const window = strainWindow(started)
  if (window === null || ready === null) return { kind: 'unknown' }
  const doneBy = isoOf(dayNumber(by) - restDays - SWEETEN_DAYS)
  const opens = isoOf(Math.max(window.opens, dayNumber(today)))
  return isBefore(doneBy, opens)
    ? { kind: 'late', ready: isoOf(dayNumber(opens) + SWEETEN_DAYS + restDays) }
    : { kind: 'if_done', step: 'strain', doneBy }
}
