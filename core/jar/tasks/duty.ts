import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import { dayNumberAt } from '../../quantity/time/zone.ts'
import type { Entry } from '../entry/entry.ts'

/**
 * What a jar asks of its maker. `add`: a plant that the plan puts in later; `filter`: only reminders sent long ago name it;
 * `drink`: bottles that are soon past their best.
 */
export type DutyKind = 'shake' | 'taste' | 'add' | 'strain' | 'sweeten' | 'filter' | 'bottle' | 'ready' | 'drink'

/** What is told and asks for nothing: it only waits where reminders are put off. */
export const isNews = (kind: DutyKind): boolean => kind === 'ready' || kind === 'drink'

/** A pause until this day has no end: the last day that can be typed. */
export const ENDLESS: IsoDay = '2199-12-31'

/** From here on, in any zone, that day is it. */
const ENDLESS_MS = Date.parse(ENDLESS) - 86_400_000

/** Whether a reminder is put off for good. */
export const neverComes = ({ dueMs }: Pick<Duty, 'dueMs'>): boolean => dueMs >= ENDLESS_MS

/** Whoever means a longer pause types its year. A quarter of a year; common practice, no source. */
const LONG_PAUSE_DAYS = 92

/** Whether a day so far ahead, its year assumed, is rather one that has just passed than the end of a pause. */
export const isLongPause = (daysAhead: number): boolean => daysAhead > LONG_PAUSE_DAYS

/** When a person wants to be reminded. */
export interface DutySettings {
  /** IANA name. */
  readonly zone: string
  /** Minutes after local midnight, 0 to 1439; 540 is nine in the morning. */
  readonly atMinutes: number
  readonly shake: ShakeRhythm
  /** Whether bottles that are soon past their best are spoken of; left out: they are. */
  readonly drink?: OnOff
  /** Nothing is said before this day. */
  readonly pausedUntil: IsoDay | null
}

export type OnOff = 'on' | 'off'

export type ShakeRhythm = 'daily' | 'every_other_day' | 'off'

/** One reminder of a jar: said once, at `dueMs` or as soon after as can be. */
export interface Duty {
  readonly kind: DutyKind
  /** The local day it belongs to. */
  readonly day: IsoDay
  /**
   * `shake.2026-12-01`: with the jar's id its name for ever; the same key is never said twice. What was put off to an hour
   * is said again then: `shake.2026-12-01.7` by the seventh entry.
   */
  readonly key: string
  readonly dueMs: number
  /** The last of its kind until somebody answers. */
  readonly isLast: boolean
  /** The last day for it, where there is one. */
  readonly by: IsoDay | null
}

/** Whether it is too late for it on a day: there is nothing left to taste for, or its bottles are past their best. */
export const isLapsed = ({ kind, by }: Pick<Duty, 'kind' | 'by'>, today: IsoDay): boolean =>
  (kind === 'taste' || kind === 'drink') && by !== null && by < today

export const dutyKey = (kind: DutyKind, day: IsoDay, again: number | null): string =>
  again === null ? `${kind}.${day}` : `${kind}.${day}.${again}`

/**
 * The day on which an entry was made, where its maker was then. Reminders are said on later days only: whether one was due
 * must not depend on an hour or a zone that are changed afterwards.
 */
export const enteredDay = ({ zone, enteredMs }: Entry): number => dayNumberAt(zone, enteredMs)
