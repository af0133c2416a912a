import type { Invocation } from '../../calls/invocation.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { Problem } from './call-outcome.ts'

/** The options of a call with another text for one of them, as a line to type; the jar is named first, one that is to be begun with `name:`. */
export const lineWith = ({ path, options }: Invocation, changed: Readonly<Record<string, string>>): string =>
  lineOf({ path, options: { ...options, ...changed } }, path === 'jar start')

/** A problem that knows what could stand in its option's place, with the whole line that would run. */
export const withLineInstead = (problem: Problem, call: Invocation): Problem => {
  const { option, values } = problem
  if (option === undefined || !('fix' in values) || typeof values.fix !== 'string') return problem
  return { ...problem, values: { ...values, line: lineWith(call, { [option]: values.fix }) } as Problem['values'] }
}
