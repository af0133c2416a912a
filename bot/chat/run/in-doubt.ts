import type { Invocation } from '../../calls/invocation.ts'
import type { AllProblems } from '../../text/language.ts'
import type { Problem } from './call-outcome.ts'

/** All jars, or several by their ids. */
const SEVERAL = /^all$|^#\S+\s/i

/** With the jar that was named, and whether the same call is known again. */
export const inDoubt = (problem: Problem, call: Invocation | null, isRemembered: boolean): Problem => {
  if (problem.problem !== 'unsure') return problem
  const jar = call?.options.jar ?? call?.options.name
  const isOne = jar !== undefined && !SEVERAL.test(jar.trim())
  const values = { ...(problem.values as AllProblems['unsure']), isRemembered, ...(isOne && { jar }) }
  return { ...problem, values }
}
