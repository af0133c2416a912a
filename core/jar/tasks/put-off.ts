import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import { dayNumber } from '../../quantity/time/day-number.ts'
import type { HappeningEntry } from '../entry/entry.ts'
import type { JarState, Of } from '../state/jar-state.ts'
import { enteredDay } from './duty.ts'

/** Until when the maker wants to hear nothing of a jar. */
export interface PutOff {
  readonly untilDay: number
  /** The instant of that day; null: its morning. */
  readonly untilMs: number | null
  /** The entry that says so. */
  readonly seq: number
}

/** The last putting off counts; null where there is none, or where it is to no later day or hour. */
export function putOffOf({ happened }: JarState): PutOff | null {
  const entry = happened.findLast(({ kind }) => kind === 'put_off') as Of<'put_off'> | undefined
  if (entry === undefined) return null
  const { untilMs, seq, enteredMs } = entry
  const untilDay = dayNumber(entry.untilDay)
  const isLater = untilMs === null ? untilDay > enteredDay(entry) : untilMs > enteredMs
  return isLater ? { untilDay, untilMs, seq } : null
}

/** Whether an entry put something off that holds no longer: only the last does, until its day or its hour has come. */
export function isOverPutOff(
  entry: HappeningEntry,
  happened: readonly HappeningEntry[],
  { today, nowMs }: { readonly today: IsoDay; readonly nowMs: number },
): boolean {
  if (entry.kind !== 'put_off') return false
  const last = happened.findLast(({ kind }) => kind === 'put_off')
  return entry !== last || (entry.untilMs === null ? entry.untilDay <= today : entry.untilMs <= nowMs)
}
