import { dayNumber } from '../../quantity/time/day-number.ts'
import { dayNumberAt } from '../../quantity/time/zone.ts'
import type { Entry } from '../entry/entry.ts'
import type { DutyKind } from './duty.ts'

/** The reminders of one kind before anybody puts them off. Days are counted from 1 January 1970. */
export interface Series {
  readonly kind: DutyKind
  /** In order, each once. */
  readonly days: readonly number[]
  /** The day from which it can be done; on that of its entry nobody is reminded who did not put it off. */
  readonly fromDay: number
  /** The entry that gives rise to them: none falls due before it was entered. */
  readonly since: Entry
  /** The first is said at this hour of its day instead of the morning. */
  readonly hour: Hour | null
  /** The last day for it, where there is one. */
  readonly byDay: string | null
  /** Said on this day at the earliest, under the key of its own day. */
  readonly heldUntilDay: number
  /** And not before this instant. */
  readonly heldUntilMs: number
  /** The day whose reminder was put off to an hour, by which entry: it is another than the one said that morning. */
  readonly again: { readonly day: number; readonly seq: number } | null
}

export interface Hour {
  readonly ms: number
  readonly day: number
}

/**
 * The day on which an entry was made, where its maker was then. Reminders are said on later days only: whether one was due
 * must not depend on an hour or a zone that are changed afterwards.
 */
export const enteredDay = ({ zone, enteredMs }: Entry): number => dayNumberAt(zone, enteredMs)

/** The day from which what follows an entry is counted: its own, or that on which it was entered late. */
export const knownDay = (entry: Entry): number => Math.max(dayNumber(entry.day), enteredDay(entry))

export const series = (
  kind: DutyKind,
  since: Entry,
  days: readonly number[],
  {
    hour = null,
    byDay = null,
    fromDay = Number.POSITIVE_INFINITY,
  }: Partial<Pick<Series, 'hour' | 'byDay' | 'fromDay'>> = {},
): Series => ({
  kind,
  since,
  days,
  hour,
  byDay,
  fromDay,
  heldUntilDay: Number.NEGATIVE_INFINITY,
  heldUntilMs: Number.NEGATIVE_INFINITY,
  again: null,
})
