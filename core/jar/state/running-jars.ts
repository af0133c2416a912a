import { DomainError } from '../../domain-error.ts'
import { freeName, isNear } from '../entry/jar-name.ts'
import { type JarState, jarStateOf, type KeptJar } from './jar-state.ts'

/** Running jars that a person may have. */
export const MOST_RUNNING = 100

/** A jar that is neither empty nor thrown away. */
export interface RunningJar<Jar extends KeptJar = KeptJar> {
  readonly jar: Jar
  readonly story: JarState
}

export const runningJars = <Jar extends KeptJar>(jars: readonly Jar[]): readonly RunningJar<Jar>[] =>
  jars.flatMap((jar) => {
    const story = jarStateOf(jar.entries)
    return story === null || story.ended !== null ? [] : [{ jar, story }]
  })

/** The names of running jars. */
export const namesTaken = (jars: readonly KeptJar[]): readonly string[] =>
  runningJars(jars).map(({ story }) => story.name)

/** Throws `jar_name_taken`, with a name that is free, where another running jar has this one. */
export function expectFree(name: string, jars: readonly KeptJar[]): void {
  const taken = namesTaken(jars)
  const near = taken.find((other) => isNear(other, name))
  if (near === undefined) return
  throw new DomainError('bad_value', 'jar_name_taken', { name: near, free: freeName(name, taken) })
}
