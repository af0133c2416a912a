import type { Happening, HappeningEntry } from '../../../core/jar/entry/entry.ts'
import type { Source } from '../../../core/jar/state/contents.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'

export interface NowSaid {
  readonly volumeMl: Measured
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
  readonly volume: Source
  readonly strength: Source
}

/** What a jar has become, or comes to. */
export type BecameSaid = Pick<NowSaid, 'volumeMl' | 'abvPercent' | 'sugarGPerL'>

/** When something was, null where that is today. */
export interface LateStep {
  readonly day: IsoDay | null
}

export interface RecordedStep extends LateStep {
  readonly name: string
  readonly happening: Happening | HappeningEntry
  /** What it has made of what is in the jar, where that is said. */
  readonly became?: BecameSaid | null
  /** What is not in bottles yet, where that is said. */
  readonly leftMl?: Measured | null
  /** Only that it was done: no amount, no mark and no note of it, where others may read along. */
  readonly isBrief?: boolean
}
