import type { HappeningEntry } from '../../../core/jar/entry/entry.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'

export interface EntrySaid {
  /** As it stands now. */
  readonly happening: HappeningEntry
  /** The days of several in a row, in order, where only these are worth saying. */
  readonly days: readonly IsoDay[]
  /** What was put right of it: as it is now, and was entered first; of `when` days. */
  readonly changes: readonly { readonly option: string; readonly was: string | null; readonly now: string }[]
}

export interface PutOffUntil {
  readonly untilDay: IsoDay
  readonly untilMs: number | null
  /** IANA name; null where only the day is known. */
  readonly zone: string | null
}

export interface EntryNumbers {
  readonly from: number
  readonly to: number
  /** Null of several: theirs are told beside. */
  readonly day: IsoDay | null
  readonly today: IsoDay
}
