import type { Jar, Settings, Share } from '../../../store/person.ts'
import type { LeftJar } from '../../text/messages/file-problems.ts'

/** Of the files that are written; one with a higher number comes from a newer Larderbell. Version 1 has entries as files of people had up to their version 3. */
export const NOTEBOOK_VERSION = 5

/** The first part of every file, by which it is known again. */
export const NOTEBOOK_MARK = 'notebook'

/** Bytes of a file with more than one jar. */
export const MOST_SHARED_BYTES = 1_000_000

/** Bytes of a file that is taken in, which may have to hold one jar of the most that is kept; Discord carries as much. */
export const MOST_BYTES = 10_000_000

/** A jar of a file, and which it is there, from 1. */
export interface GivenJar {
  readonly number: number
  readonly jar: Jar
}

/** Everything of a person's that is worth carrying elsewhere: what is on its way to them is not. */
export interface Notebook {
  readonly settings: Settings
  readonly shares: readonly Share[]
  readonly jars: readonly GivenJar[]
  /** What cannot be taken in. */
  readonly left: readonly LeftJar[]
}
