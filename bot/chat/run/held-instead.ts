import { isRefused } from '../../../core/domain-error.ts'
import { findJar } from '../../../core/jar/state/find-jar.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import type { Jar } from '../../../store/person.ts'
import type { Invocation } from '../../calls/invocation.ts'
import type { Path } from '../../calls/signatures.ts'
import { toldHeld, toldIn } from '../../commands/jar/known/told-trouble.ts'
import type { Problem } from './call-outcome.ts'

/** What tells of a jar, puts its record right or ends it: there a jar that is to go stands in nobody's way. */
const OF_RECORD: ReadonlySet<string> = new Set<Path>([
  'trouble',
  'jar note',
  'jar undo',
  'jar correct',
  'jar rename',
  'jar discard',
  'jar show',
  'forget',
])

/** What is a danger of its own, or no matter of a jar; all else that is wrong with a step leads on with it once it is mended. */
const OF_ITSELF: ReadonlySet<Problem['code']> = new Set<Problem['code']>([
  'refused',
  'over_ceiling',
  'storage',
  'internal',
])

/** The jars that a call names. */
const NAMING = ['jar', 'with', 'second-of'] as const

/**
 * A problem of a step as it is told: where the jar is to be thrown away, or not to be drunk yet, that is said in place of what
 * the step lacks or has to wait for, and nothing leads on.
 */
export function withHeldInstead(problem: Problem, call: Invocation, jars: readonly Jar[]): Problem {
  if (OF_ITSELF.has(problem.code) || OF_RECORD.has(call.path)) return problem
  const [found] = NAMING.flatMap((option) => {
    const typed = call.options[option]
    if (typed === undefined || isRefused(() => findJar(typed, jars))) return []
    const story = jarStateOf(findJar(typed, jars).entries)
    const trouble = story === null ? null : toldIn(story)
    return story === null || trouble === null || trouble.verdict === 'ask' ? [] : [toldHeld(story, trouble)]
  })
  if (found === undefined) return problem
  return { code: found.code, problem: found.problem, values: found.values, option: 'jar' }
}
