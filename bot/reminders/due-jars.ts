import { type AskedOfJar, askedToday } from '../../core/jar/tasks/asked-today.ts'
import { allDuties } from '../../core/jar/tasks/duties.ts'
import { dayNumberAt, instantOf } from '../../core/quantity/time/zone.ts'
import { dutySettings } from '../../store/due.ts'
import type { Jar, Nudge, Person } from '../../store/person.ts'
import { believed, saidBy } from '../../store/told-ahead.ts'
import type { Now } from './prepare-nudge.ts'

/** What a nudge says of a jar of a person's. */
export interface AskedJar extends AskedOfJar {
  readonly jarId: string
  readonly entries: Jar['entries']
}

const keysOf = ({ duties }: Nudge, { id }: Jar): ReadonlySet<string> =>
  new Set(duties.filter(({ jarId }) => jarId === id).map(({ key }) => key))

/** What a nudge asks for, and what else can be done today that is said with it. */
export function askedOf(person: Person, nudge: Nudge, { nowMs, assumedZone }: Now): readonly AskedJar[] {
  const settings = dutySettings(person.settings, assumedZone)
  const morningMs = instantOf(settings.zone, dayNumberAt(settings.zone, nowMs), settings.atMinutes)
  const jars = person.jars.map((jar) => {
    const entries = believed(jar.entries, nowMs)
    const keys = keysOf(nudge, jar)
    const due = keys.size === 0 ? [] : allDuties(entries, settings).filter(({ key }) => keys.has(key))
    return { jarId: jar.id, entries, due, said: saidBy(jar, nowMs) }
  })
  const isMorning = jars.some(({ due }) => due.some(({ dueMs }) => dueMs === morningMs))
  return jars.flatMap(({ jarId, entries, due, said }) =>
    askedToday(entries, { due, said, isMorning }, settings, nowMs).map((asked) => ({ jarId, entries, ...asked })),
  )
}
