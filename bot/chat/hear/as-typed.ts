import type { CallRead } from '../../talk/frames/reading.ts'
import type { AllProblems } from '../../text/language.ts'
import type { Heard, Understood } from './heard.ts'

/** Answered as it was typed, or written down as far as anybody can tell. */
export const isDone = (said: Heard): boolean => said.outcome.ok || problemOf(said) === 'unsure'

export const isRefusal = ({ outcome }: Heard): boolean => !outcome.ok && REFUSALS.has(outcome.error.code)

export const problemOf = ({ outcome }: Heard): string | null => (outcome.ok ? null : outcome.error.problem)

/** A name that cannot be, or that is near to no jar's: another jar is never taken for it. Amounts behind a name are read. */
export function isNameWrong({ outcome }: Heard, line: string): boolean {
  if (outcome.ok) return false
  const { problem, values } = outcome.error
  if (problem !== 'no_such_jar') return problem === 'bad_jar_name'
  const { nearest } = values as AllProblems['no_such_jar']
  return nearest === null && !/\d/.test(line.replace(/#\w+/, ''))
}

/** One of several that a name may mean: where only that one can be meant, nobody is asked. */
export function isAmong({ options: { jar } }: CallRead, asTyped: Understood | null): boolean {
  const outcome = asTyped?.heard.outcome
  if (jar === undefined || outcome === undefined || outcome.ok || outcome.error.problem !== 'no_such_jar') return false
  return (outcome.error.values as AllProblems['no_such_jar']).several?.includes(jar) === true
}

/** What is asked of a word, such as how sweet a liqueur is, is answered by no other reading of the line. */
const REFUSALS: ReadonlySet<string> = new Set(['refused', 'over_ceiling', 'ambiguous'])
