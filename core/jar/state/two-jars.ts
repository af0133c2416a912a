import { DomainError } from '../../domain-error.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { findJar } from './find-jar.ts'
import type { KeptJar } from './jar-state.ts'

const isNotFound = (error: unknown): boolean => error instanceof DomainError && error.code === 'not_found'

const bothIn = <Jar extends KeptJar>(one: string, other: string, jars: readonly Jar[]): readonly [Jar, Jar] => [
  findJar(one, jars),
  findJar(other, jars),
]

/** The two jars of `lemon + walnut`; a name may itself hold a plus. Throws `compare_two` where there are not two. */
export function findTwoJars<Jar extends KeptJar>(typed: string, jars: readonly Jar[]): readonly [Jar, Jar] {
  const places = [...typed.matchAll(/\+/g)].map(({ index }) => index)
  const pieces = places
    .map((at) => [typed.slice(0, at).trim(), typed.slice(at + 1).trim()] as const)
    .filter(([one, other]) => one !== '' && other !== '')
  const [first] = pieces
  if (first === undefined) throw new DomainError('bad_value', 'compare_two', { typed: shown(typed) })
  for (const [one, other] of pieces.slice(1)) {
    try {
      return distinct(bothIn(one, other, jars), typed)
    } catch (error) {
      if (!isNotFound(error)) throw error
    }
  }
  return distinct(bothIn(...first, jars), typed)
}

function distinct<Jar extends KeptJar>(pair: readonly [Jar, Jar], typed: string): readonly [Jar, Jar] {
  if (pair[0].id === pair[1].id) throw new DomainError('bad_value', 'compare_two', { typed: shown(typed) })
  return pair
}
