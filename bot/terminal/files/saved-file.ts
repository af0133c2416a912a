/** A file of a reply and where it is; no path where it could not be made or written, and then why, as the system calls it. */
export interface SavedFile {
  readonly name: string
  readonly mime: string
  readonly path: string | null
  readonly code: string | null
}
