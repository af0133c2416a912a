import { isRefused } from '../../../core/domain-error.ts'
import { findJar } from '../../../core/jar/state/find-jar.ts'
import type { Jar } from '../../../store/person.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { tellsApart } from '../../talk/lexicon/tells-apart.ts'

/** What stands before the first figure and before the first option. */
const HEAD = /^(?:(?!\S+:)[^\d\s]+(?:\s+|$))*/

/** What joins an amount or a time to it. */
const BEHIND = /(?:[\s,;.]+(?:in|at|for|on|with|about|to|of|di|da|tra|fra|con|a|circa))*[\s,;.]*$/i

/**
 * A line whose jar's place tells one jar from another (`/jar strain other 900 ml`), where there is none such: with that as its jar,
 * which is refused. The one jar that there is, is never taken for it. Null where no other one is told.
 */
export function anotherNamed(rest: string, path: string, jars: readonly Jar[]): Invocation | null {
  const jar = (HEAD.exec(rest)?.[0] ?? '').replace(BEHIND, '')
  if (jar === '' || !tellsApart(jar)) return null
  return isRefused(() => findJar(jar, jars)) ? { path, options: { jar } } : null
}
