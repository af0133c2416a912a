import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import type { UnitSystem } from '../../../core/quantity/read/parse-units.ts'
import type { Plain } from './plain.ts'

export interface StoredCounts {
  /** All of them. */
  readonly jars: number
  /** Of these emptied or thrown away. */
  readonly finished: number
  /** Of these no list shows: their start was taken back. */
  readonly undone: number
  readonly entries: number
}

export interface SettingsMessages {
  headlines: {
    settings: {
      readonly units?: UnitSystem | null
      readonly country?: string | null
      readonly zone?: string | null
      readonly freezerC?: number | null
    }
  }
  rows: Plain<'settings_units' | 'settings_country' | 'settings_zone' | 'settings_freezer'>
  cells: {
    settings_units: { readonly units: UnitSystem | null }
    settings_freezer: { readonly freezerC: number; readonly isAssumed: boolean }
    settings_country: { readonly country: string | null }
    settings_zone: {
      readonly zone: string
      readonly isAssumed: boolean
      readonly day: CalendarDay
      readonly minutes: number
    }
  }
  notes: Plain<'settings_zone_ahead'> & {
    /** `example`: what somebody may type for their own. */
    settings_zone_assumed: { readonly example: string }
    settings_no_country: { readonly example: string }
  }
}

export interface ForgetMessages {
  headlines: Plain<'not_forgotten'> & {
    forget_ask: StoredCounts & { readonly settings: number; readonly reminders: number; readonly shares: number }
    forgotten: StoredCounts & { readonly copies: number; readonly files: number }
    forget_one_jar: { readonly name: string; readonly line: string }
  }
  notes: Plain<'forget_changed' | 'forget_not_one_jar'> & {
    forget_in_full: { readonly typed: string }
  }
  actions: Plain<'forget_all'>
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly settings: SettingsMessages
    readonly forget: ForgetMessages
  }
}
