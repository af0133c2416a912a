import type { CalendarDay } from '../../core/quantity/quantities.ts'
import type { Sayings } from './sayings.ts'

export interface DoctorMoment {
  readonly day: CalendarDay
  /** After midnight. */
  readonly minutes: number
  /** Ahead of now; what is past is less than 0. */
  readonly aheadMs: number
}

export interface FolderHolder {
  readonly pid: number
  readonly host: string
  readonly isHere: boolean
  readonly mayRun: boolean
}

/** Whether reminders run. */
export type ReminderVerdict =
  | 'well'
  | 'left'
  | 'starting'
  | 'empty'
  | 'idle'
  | 'stopped'
  | 'stuck'
  | 'deaf'
  | 'ahead'
  | 'unknown'

/** What `npm run doctor` says. */
export interface DoctorText extends Sayings<'none' | 'nothingDue' | 'tokenShown' | 'restoreHow' | 'noStatus'> {
  readonly rows: Sayings<
    | 'version'
    | 'node'
    | 'folder'
    | 'rights'
    | 'lock'
    | 'people'
    | 'jars'
    | 'unreadable'
    | 'set_aside'
    | 'copy'
    | 'due'
    | 'tick'
    | 'heard'
    | 'sent'
    | 'zone'
    | 'token'
  >
  readonly rights: Sayings<'own' | 'shared' | 'read_only'>
  lock(holder: FolderHolder | null): string
  jars(values: { readonly running: number; readonly all: number }): string
  unreadable(files: number): string
  setAside(files: number): string
  day(values: CalendarDay): string
  moment(values: DoctorMoment): string
  heard(when: string): string
  restored(values: {
    readonly userId: string
    readonly day: string
    readonly jars: number
    readonly entries: number
    readonly kept: string | null
  }): string
  zone(values: { readonly zone: string }): string
  readonly verdict: Sayings<ReminderVerdict>
}
