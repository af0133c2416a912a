import type { Invocation } from '../../calls/invocation.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { Problem } from './call-outcome.ts'
import type { Try } from './example-tried.ts'

/** A jar that only spirit makes as strong as wished, with the line that works out how much, tried; what is in the way where it can't be. */
export async function withSpiritInstead(problem: Problem, call: Invocation, attempt: Try): Promise<Problem> {
  const { jar, 'to-strength': strength, 'to-sweetness': sweetness } = call.options
  if (problem.problem !== 'jar_too_weak' || jar === undefined || strength === undefined) return problem
  const wish = { jar, 'to-strength': strength, ...(sweetness !== undefined && { 'to-sweetness': sweetness }) }
  const meant = { path: 'adjust', options: wish }
  const tried = await attempt(meant)
  if (!tried.ok) return tried.error.code === 'unreachable' || tried.error.code === 'not_soluble' ? tried.error : problem
  return { ...problem, values: { ...problem.values, line: lineOf(meant) } as Problem['values'] }
}
