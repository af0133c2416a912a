import type { IsoDay } from '../core/quantity/time/calendar-day.ts'

/** What can go wrong with the folder of data, by key, with the values its sentence needs. */
export interface StorageProblems {
  /** Another process holds the folder. */
  locked: {
    readonly folder: string
    readonly host: string
    readonly pid: number
    /** Whether it is one of this machine's that can be seen from here; of another nothing is known. */
    readonly isHere: boolean
  }
  no_rights: { readonly path: string }
  disk_full: { readonly path: string }
  /** Any other failure of the disk; `code` as the system names it. */
  disk_failed: { readonly path: string; readonly code: string }
  /**
   * The new text took the name, but may be gone after a power cut. `jar`: the one that was named, if any; `isRemembered`:
   * the same call made again is known to be that.
   */
  unsure: { readonly path: string; readonly code: string; readonly jar?: string; readonly isRemembered?: boolean }
  /** Erasing failed on the way: some of it may be gone. */
  half_erased: { readonly path: string; readonly code: string }
  /** Larger than what could be read again. */
  too_large: { readonly mostBytes: number }
  /** Written by a newer Larderbell. */
  newer_version: { readonly path: string; readonly version: number; readonly known: number }
  /** Unreadable, and it could not be set aside either; `day`: of the fullest copy, null where there is none. */
  unreadable: { readonly path: string; readonly userId: string; readonly day: IsoDay | null }
  /** There is no copy of that day; `days`: of which there are, the latest first. */
  no_copy: { readonly userId: string; readonly day: IsoDay; readonly days: readonly IsoDay[] }
  /** The copy cannot be read. */
  bad_copy: { readonly path: string }
  bad_user_id: Record<string, never>
  closed: Record<string, never>
}

/** The folder of data failed: a key and its values, never a sentence. */
export class StorageError<Key extends keyof StorageProblems = keyof StorageProblems> extends Error {
  override readonly name = 'StorageError'
  readonly code = 'storage'
  readonly problem: Key
  readonly values: StorageProblems[Key]

  constructor(problem: Key, values: StorageProblems[Key], cause?: unknown) {
    super(problem, { cause })
    this.problem = problem
    this.values = values
  }
}
