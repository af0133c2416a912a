import type { JarEntry } from '../../../core/jar/entry/entry.ts'
import type { Jar } from '../../../store/person.ts'

/** Which attempt made an entry is of no worth elsewhere, and tells two notebooks of the same story apart. */
export const withoutAttempt = ({ attempt: _, ...entry }: JarEntry): JarEntry => entry as JarEntry

/** When reminders were said, by a clock that is none of elsewhere, stays here too. */
export const withoutAttempts = ({ toldMs: _, ...jar }: Jar): Jar => ({
  ...jar,
  entries: jar.entries.map(withoutAttempt),
})
