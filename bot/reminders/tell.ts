import type { Nudge, Person } from '../../store/person.ts'

type Said = Pick<Nudge['duties'][number], 'jarId' | 'key'>

/** The person with these reminders marked as said; those of a jar that is gone are nobody's any more. */
export const tell = (person: Person, said: readonly Said[]): Person => {
  if (said.length === 0) return person
  return {
    ...person,
    jars: person.jars.map((jar) => {
      const known = new Set(jar.told)
      const keys = said.filter(({ jarId, key }) => jarId === jar.id && !known.has(key)).map(({ key }) => key)
      return keys.length === 0 ? jar : { ...jar, told: [...jar.told, ...new Set(keys)] }
    }),
  }
}
