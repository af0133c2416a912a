import type { Problem } from './execute.ts'
import type { Invocation } from './invocation.ts'
import { writeLine } from './write-line.ts'

/** A problem that knows what could stand in its option's place, with the whole line that would run. */
export const withLineInstead = (problem: Problem, call: Invocation | null): Problem => {
  const { option, values } = problem
  if (call === null || option === undefined || !('fix' in values) || typeof values.fix !== 'string') return problem
  const options = Object.entries({ ...call.options, [option]: values.fix })
  const line = writeLine(call.path, null, options)
  return { ...problem, values: { ...values, line } as Problem['values'] }
}
