import { isHeldBack } from '../../../core/jar/limits/judge-jar.ts'
import { type JarState, jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { type Duty, neverComes } from '../../../core/jar/tasks/duty.ts'
import { untold } from '../../../store/due.ts'
import type { Jar, Person } from '../../../store/person.ts'

/** A reminder that is still to come. */
export interface Coming {
  readonly jar: Jar
  readonly story: JarState
  readonly duty: Duty
  /** The same whenever and wherever it is made, so that a calendar knows it again. */
  readonly uid: string
}

/** A jar's id is one of few; the instant at which it was entered goes along with it, also to another installation. */
const uidOf = ({ id, entries }: Jar, { key }: Duty): string =>
  `${id}.${key}.${entries[0]!.enteredMs.toString(36)}@larderbell`

/** The reminders to come of these jars, in the order in which they fall due. */
export function comingOf(
  person: Person,
  jars: readonly Jar[],
  { nowMs, assumedZone }: { readonly nowMs: number; readonly assumedZone: string },
): readonly Coming[] {
  const told = new Map(jars.map((jar) => [jar.id, { jar, story: jarStateOf(jar.entries) }]))
  return untold(person, assumedZone, nowMs).flatMap(({ jarId, duty }) => {
    const { jar, story } = told.get(jarId) ?? { story: null }
    // What must not be drunk as it is asks for nothing until it is put right.
    return jar === undefined || story === null || duty.dueMs <= nowMs || neverComes(duty) || isHeldBack(story)
      ? []
      : [{ jar, story, duty, uid: uidOf(jar, duty) }]
  })
}
