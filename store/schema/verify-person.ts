import type { Jar, Person } from '../person.ts'
import { personSchema } from './person-schema.ts'

/**
 * Refuses, as a fault of ours, what could be written but not read again. Jars and entries that were there before are not
 * looked at.
 */
export function verifyPerson(next: Person, before: Person): void {
  const untouched = new Set(before.jars)
  const entriesBefore = new Map(before.jars.map(({ id, entries }) => [id, entries]))
  const newOf = (jar: Jar): Jar => {
    const known = new Set(entriesBefore.get(jar.id))
    return { ...jar, entries: jar.entries.filter((entry) => !known.has(entry)) }
  }
  const jars = next.jars.filter((jar) => !untouched.has(jar)).map(newOf)
  const read = personSchema.safeParse({ ...next, jars })
  if (!read.success) {
    const [issue] = read.error.issues
    throw new TypeError(`not a person that can be stored: ${issue?.path.join('.')} (${issue?.code})`)
  }
}
