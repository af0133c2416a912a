import type { Nudge, Person } from '../../store/person.ts'
import { withoutAhead } from '../../store/told-ahead.ts'

type Said = Pick<Nudge['duties'][number], 'jarId' | 'key'>

/** The person with these reminders marked as said at an instant; those of a jar that is gone are nobody's any more. */
export const tell = (person: Person, said: readonly Said[], nowMs: number): Person => {
  if (said.length === 0) return person
  return {
    ...person,
    jars: person.jars.map((each) => {
      const jar = withoutAhead(each, nowMs)
      const saidMs = new Map(jar.told.map((key, index) => [key, jar.toldMs?.[index] ?? 0]))
      const isNew = ({ jarId, key }: Said): boolean => jarId === jar.id && !((saidMs.get(key) ?? Infinity) <= nowMs)
      const keys = said.filter(isNew).map(({ key }) => key)
      for (const key of keys) saidMs.set(key, nowMs)
      return keys.length === 0 ? jar : { ...jar, told: [...saidMs.keys()], toldMs: [...saidMs.values()] }
    }),
  }
}
