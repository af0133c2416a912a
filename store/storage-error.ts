/** What can go wrong with the folder of data, by key, with the values its sentence needs. */
export interface StorageProblems {
  /** Another process holds the folder. */
  locked: { readonly folder: string; readonly host: string; readonly pid: number; readonly isHere: boolean }
  no_rights: { readonly path: string }
  disk_full: { readonly path: string }
  /** Any other failure of the disk; `code` as the system names it. */
  disk_failed: { readonly path: string; readonly code: string }
  /** Written by a newer Larderbell. */
  newer_version: { readonly path: string; readonly version: number; readonly known: number }
  /** Unreadable, and it could not be set aside either. */
  unreadable: { readonly path: string }
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
