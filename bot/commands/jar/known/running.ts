import { DomainError } from '../../../../core/domain-error.ts'
import { freeName, isNear } from '../../../../core/jar/entry/jar-name.ts'
import { type Story, storyOf } from '../../../../core/jar/state/jar-state.ts'
import type { Jar } from '../../../../store/person.ts'

/** Running jars of a person. */
export const MOST_RUNNING = 100

/** A jar that is neither empty nor thrown away. */
export interface Running {
  readonly jar: Jar
  readonly story: Story
}

export const runningJars = (jars: readonly Jar[]): readonly Running[] =>
  jars.flatMap((jar) => {
    const story = storyOf(jar.entries)
    return story === null || story.ended !== null ? [] : [{ jar, story }]
  })

/** Throws `jar_name_taken`, with a name that is free, where another running jar has this one. */
export function expectFree(name: string, jars: readonly Jar[]): void {
  const taken = runningJars(jars).map(({ story }) => story.name)
  const near = taken.find((other) => isNear(other, name))
  if (near === undefined) return
  throw new DomainError('bad_value', 'jar_name_taken', { name: near, free: freeName(name, taken) })
}
