import { MOST_ENTRIES } from '../../../core/jar/record/bounds.ts'

/** A jar may have a hundred more than usual for its end and what was taken back. */
export const MOST_IN_JAR = MOST_ENTRIES + 100

/** Running and done, of a file and of a person once it is taken in. */
export const MOST_JARS = 1000

/** Bytes for the last entry that still went in, and for those of the kept places. */
export const KEPT_BYTES = 200_000
