import type { Invocation } from '../../calls/invocation.ts'
import { writeLine } from '../../calls/write-line.ts'
import type { Problem } from '../execute.ts'

/** The options of a call with another text for one of them, as a line to type; the jar is named first. */
export const lineWith = ({ path, options }: Invocation, changed: Readonly<Record<string, string>>): string => {
  const { jar = null, ...others } = { ...options, ...changed }
  return writeLine(path, jar, Object.entries(others))
}

/** A problem that knows what could stand in its option's place, with the whole line that would run. */
export const withLineInstead = (problem: Problem, call: Invocation): Problem => {
  const { option, values } = problem
  if (option === undefined || !('fix' in values) || typeof values.fix !== 'string') return problem
  return { ...problem, values: { ...values, line: lineWith(call, { [option]: values.fix }) } as Problem['values'] }
}
