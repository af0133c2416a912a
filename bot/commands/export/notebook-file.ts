import type { Jar, Settings, Share } from '../../../store/person.ts'

/** Of the files that are written; one with a higher number comes from a newer Larderbell. */
export const NOTEBOOK_VERSION = 1

/** The first part of every file, by which it is known again. */
export const NOTEBOOK_MARK = 'notebook'

/** Bytes of a file that is taken in. */
export const MOST_BYTES = 1_000_000

/** Everything of a person's that is worth carrying elsewhere: what is on its way to them is not. */
export interface Notebook {
  readonly settings: Settings
  readonly shares: readonly Share[]
  readonly jars: readonly Jar[]
}
