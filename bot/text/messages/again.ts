import type { DaySpan } from '../../../core/jar/state/last-time.ts'
import type { Targets } from '../../../core/recipe/targets.ts'

import type { CodeFrom } from './share.ts'

export interface AgainAs {
  readonly name: string
  readonly factor: number
  /** What there was least of; null: the same amounts. */
  readonly by: CodeFrom['by']
  /** The plant that there was least of. */
  readonly id: CodeFrom['id']
  /** Some of its plants were named anew. */
  readonly isOtherwise: boolean
  /** Liquid of these jars was poured into it: its own batch is meant. */
  readonly pouredIn: readonly string[]
}

/** What a batch became, what was planned, and which of them the new one aims for. */
interface Taken {
  /** What went otherwise is done again: it was liked. */
  readonly isAsItWent: boolean
}

export interface AgainMessages {
  notes: {
    /** Nothing is started by it. */
    again_as: AgainAs
    /** Why so much of it. */
    again_by_alcohol: undefined
    again_strained: Taken & { readonly wentDays: number; readonly plannedDays: DaySpan }
    again_came_out: Taken & { readonly made: Targets; readonly planned: Targets }
    /** So strong as last time it can't be planned; `isMade`: it came out so, else it was planned so. */
    again_nearest: { readonly beforeAbvPercent: number; readonly abvPercent: number; readonly isMade: boolean }
    /** A step from what it was, or was planned, for how it tasted. */
    again_mended: { readonly from: Targets; readonly to: Targets; readonly isMade: boolean; readonly note: string }
    again_liked_less: { readonly rating: number | null; readonly note: string | null }
    /** All of a note of which the first screen has the beginning. */
    again_noted: { readonly note: string }
  }
  actions: {
    again_days: { readonly days: number }
    again_targets: Targets
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly again: AgainMessages
  }
}
