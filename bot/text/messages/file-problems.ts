/** What an entry of a file that is taken in has wrong. */
export type WrongEntry =
  /** A part that is missing, unknown, or no value that it can have. */
  | 'part'
  /** An amount, strength or temperature that no kitchen has. */
  | 'amount'
  | 'day'
  /** A name that a jar cannot have. */
  | 'name'
  | 'plant'
  | 'long'
  | 'number'
  /** It takes back or corrects what it cannot. */
  | 'amends'
  /** It cannot come after what stands before it. */
  | 'follow'
  /** There are as many running jars, or jars at all, as are kept. */
  | 'running'
  | 'room'
  /** Its name is another's, and it has no place for a new one. */
  | 'taken'

/**
 * A jar that is left out. `jar`: which of the file, from 1; `seq`: the entry, null of the jar as a whole. `where` is the part
 * of the jar or the entry, null where there is none.
 */
export interface LeftJar {
  readonly jar: number
  readonly name: string | null
  readonly seq: number | null
  readonly why: WrongEntry
  readonly where: string | null
}

/** What can be wrong with a file that somebody gave. */
export interface FileProblems {
  no_files_here: Record<string, never>
  /** Relative paths begin at `folder`. */
  file_not_found: { typed: string; folder: string }
  file_unreadable: { typed: string; why: 'no_file' | 'rights' | 'failed' }
  file_too_big: { name: string; mostBytes: number }
  file_not_fetched: { name: string }
  import_no_notebook: { name: string; why: 'no_text' | 'no_json' | 'deep' | 'other' }
  import_newer: { version: number; known: number }
  /** Outside the jars: `where` is the part of it. */
  import_part: { where: string }
  import_too_many: { jars: number; most: number }
  /** Of which no jar can be taken in. */
  import_jars: { left: readonly LeftJar[] }
}
