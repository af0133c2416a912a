import { jarStateOf } from '../core/jar/state/jar-state.ts'
import type { DutyKind } from '../core/jar/tasks/duty.ts'
import type { IsoDay } from '../core/quantity/time/calendar-day.ts'
import type { Jar, Nudge, Person } from './person.ts'

/** What could not be sent, of one kind and day. */
export interface Unsent {
  readonly duty: DutyKind
  readonly day: IsoDay
  readonly names: readonly string[]
}

/** Characters of `2026-12-01`; what was put off to an hour has more in its key. */
const ISO_DAY = 10

const isKept = ({ state }: Nudge): boolean => state === 'kept'

const nameOf = (jars: readonly Jar[], jarId: string): readonly string[] => {
  const jar = jars.find(({ id }) => id === jarId)
  const story = jar === undefined ? null : jarStateOf(jar.entries)
  return story === null ? [] : [story.name]
}

/** The reminders that were kept because no place took them, those of the same kind and day together. */
export function unsentOf({ jars, nudges }: Person): readonly Unsent[] {
  const lost = nudges.filter(isKept).flatMap(({ duties }) => duties)
  const keys = [...new Set(lost.map(({ key }) => key))]
  return keys.flatMap((key) => {
    const same = lost.filter((duty) => duty.key === key)
    const names = [...new Set(same.flatMap(({ jarId }) => nameOf(jars, jarId)))]
    const [duty] = same
    return duty === undefined || names.length === 0
      ? []
      : [{ duty: duty.kind, day: key.slice(duty.kind.length + 1).slice(0, ISO_DAY), names }]
  })
}

/** The same person once these have been said; null where there are none. */
export function withoutUnsent(person: Person): Person | null {
  const kept = person.nudges.filter(isKept)
  if (kept.length === 0) return null
  const said = kept.flatMap(({ duties }) => duties)
  return {
    ...person,
    nudges: person.nudges.filter((nudge) => !isKept(nudge)),
    jars: person.jars.map((jar) => {
      const keys = said.filter(({ jarId }) => jarId === jar.id).map(({ key }) => key)
      return keys.length === 0 ? jar : { ...jar, told: [...new Set([...jar.told, ...keys])] }
    }),
  }
}

/** The same person once all news have been said, a file set aside among them; null where there was nothing to say. */
export function withoutNews(person: Person): Person | null {
  const told = withoutUnsent(person)
  if (person.setAside === null) return told
  return { ...(told ?? person), setAside: null }
}
