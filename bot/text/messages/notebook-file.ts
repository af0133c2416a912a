import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { LeftJar } from './file-problems.ts'
import type { Plain } from './plain.ts'

export interface ExportMessages {
  headlines: {
    calendar: {
      readonly count: number
      readonly jars: number
      readonly firstDay: IsoDay
      readonly lastDay: IsoDay
      readonly today: IsoDay
    }
    calendar_empty: { readonly isOneJar: boolean }
    exported: { readonly jars: number; readonly entries: number; readonly files: number }
    imported: {
      readonly added: number
      readonly longer: number
      readonly same: number
      readonly entries: number
      readonly isSettled: boolean
    }
  }
  notes: Plain<'calendar_again' | 'export_json' | 'export_csv' | 'import_settings' | 'import_past'> & {
    export_json_parts: { readonly files: number }
    import_renamed: { readonly names: readonly (readonly [from: string, to: string])[] }
    import_left: { readonly left: readonly LeftJar[] }
  }
  actions: Plain<'import_list'>
  files: {
    calendar_file: { readonly count: number }
    notebook_json: { readonly part: number; readonly parts: number }
    csv_batches: { readonly count: number }
    csv_entries: { readonly count: number }
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly export: ExportMessages
  }
}
