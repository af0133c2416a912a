import type { Person } from '../person.ts'
import { personSchema } from './person-schema.ts'

/** Refuses, as a fault of ours, what could be written but not read again. Entries that were there before are not looked at. */
export function verifyPerson(next: Person, before: Person): void {
  const known = new Set(before.jars.flatMap(({ entries }) => entries))
  const jars = next.jars.map((jar) => ({ ...jar, entries: jar.entries.filter((entry) => !known.has(entry)) }))
  const read = personSchema.safeParse({ ...next, jars })
  if (!read.success) {
    const [issue] = read.error.issues
    throw new TypeError(`not a person that can be stored: ${issue?.path.join('.')} (${issue?.code})`)
  }
}
