import type { DutyKind, OnOff, ShakeRhythm } from '../../../core/jar/tasks/duty.ts'
import type { MaterialId } from '../../../core/quantity/materials.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Place } from '../../../store/person.ts'
import type { PlantName } from './ingredients.ts'
import type { AskedTask } from './jar-tasks.ts'
import type { Kitchen } from './kitchen.ts'
import type { Plain } from './plain.ts'

/** Jars that ask for the same. */
export interface RemindedJars {
  readonly duty: DutyKind
  readonly jars: readonly RemindedJar[]
  /** Said in a few words: it has no reminder of its own today. */
  readonly isAside?: boolean
}

/** One jar that asks for something. */
export interface RemindedJar {
  /** In which it is told of among others. */
  readonly kitchen: Kitchen
  readonly name: string
  /** The first day for straining, where one was planned. */
  readonly fromDay: IsoDay | null
  readonly byDay: IsoDay | null
  /** What is to be put in now; without id, a plant in the maker's words. */
  readonly plants: readonly PlantName[]
  /** What is to sweeten it now, where that is known. */
  readonly syrup: {
    readonly waterMl: Measured
    readonly sweetener: MaterialId
    readonly filler: MaterialId | null
    readonly sugarG: Measured
    /** What of the sugar that water dissolves, g; null where a syrup can be made first. */
    readonly dissolvesG: number | null
    /** Worked out of what nobody has measured. */
    readonly isEstimated: boolean
  } | null
  /** Bottles that are left, where they should be drunk. */
  readonly bottles: number | null
  /** What has rested and is too strong to be drunk as it is. */
  readonly strong: { readonly abvPercent: Measured; readonly isDiluted: boolean } | null
}

export interface NudgeNames {
  readonly duty: DutyKind
  readonly names: readonly string[]
}

export interface RemindersPause {
  readonly until: IsoDay | null
  readonly today: IsoDay
}

export interface NextReminder {
  readonly asked: readonly (AskedTask & { readonly duty: DutyKind })[]
  readonly day: IsoDay
  readonly atMinutes: number
  readonly isNow: boolean
  readonly today: IsoDay
}

export interface NudgeMessages {
  headlines: {
    nudge: {
      readonly asked: readonly RemindedJars[]
      /** What needs putting right before anything else. */
      readonly held: readonly string[]
      readonly today: IsoDay
    }
  }
  notes: Plain<'nudge_moved' | 'nudge_seen'> & {
    nudge_how: { readonly duties: readonly ('taste' | 'strain')[] }
    /** Ready, and in a freezer. */
    nudge_freezer: { readonly names: readonly string[] }
    nudge_last: NudgeNames
  }
  actions: Plain<'nudge_all_shaken' | 'nudge_later' | 'nudge_later_today'> & {
    nudge_done: { readonly duty: DutyKind; readonly name: string | null }
    /** What became of one of its bottles. */
    nudge_bottle: { readonly use: 'opened' | 'given'; readonly name: string | null }
    nudge_syrup: { readonly name: string | null }
    nudge_tasted: { readonly verdict: 'good' | 'not_yet'; readonly name: string | null }
    nudge_show: { readonly isOneJar: boolean }
  }
}

export interface RemindersMessages {
  headlines: {
    reminders: RemindersPause & { isChanged: boolean; atMinutes: number }
  }
  rows: Plain<
    'reminders_place' | 'reminders_time' | 'reminders_shake' | 'reminders_drink' | 'reminders_pause' | 'reminders_next'
  >
  cells: {
    reminders_place: { readonly place: Place; readonly isHere: boolean; readonly isClosed: boolean }
    reminders_time: { readonly atMinutes: number; readonly zone: string; readonly isAssumed: boolean }
    reminders_drink: { readonly drink: OnOff }
    reminders_shake: { readonly shake: ShakeRhythm }
    reminders_pause: RemindersPause
    reminders_next: { readonly next: NextReminder | null; readonly isStopped: boolean }
  }
  notes: Plain<'reminders_proved' | 'reminders_unproved' | 'reminders_only_running'> & {
    reminders_zone_assumed: { readonly zone: string; readonly example: string }
    reminders_pause_hides: {
      readonly closing: readonly { readonly name: string; readonly day: IsoDay }[]
      readonly today: IsoDay
    }
    reminders_where: { readonly isPrivate: boolean; readonly isHere: boolean }
  }
  actions: Plain<
    'reminders_private' | 'reminders_here' | 'reminders_time' | 'reminders_stop' | 'reminders_start' | 'nudge_reminders'
  >
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly reminders: RemindersMessages
    readonly nudge: NudgeMessages
  }
}
