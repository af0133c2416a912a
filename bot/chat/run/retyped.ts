import type { Retype } from '../../../core/botanical/problems.ts'
import { plantList } from '../../../core/botanical/words/plant-list.ts'
import type { Invocation } from '../../calls/invocation.ts'
import type { AllProblems } from '../../text/language.ts'
import type { Problem } from './call-outcome.ts'
import { lineWith } from './line-instead.ts'

/** Commands that put plants into a jar, and whether they take the days of a food without amounts. */
const TAKES_DAYS: ReadonlyMap<string, boolean> = new Map([
  ['plan', true],
  ['jar start', true],
  ['jar add', false],
  ['jar correct', false],
])

/** As an example; the maker's own. */
const DAYS = '14'

/** The whole line as it was typed, with what to type in place of a part of it; null where it was no plan. */
const retypedLine = (
  { from, as }: Retype,
  option: string | undefined,
  call: Invocation,
  isFood: boolean,
): string | null => {
  const takesDays = TAKES_DAYS.get(call.path)
  const typed = option === undefined ? undefined : call.options[option]
  if (takesDays === undefined || option === undefined || typed === undefined) return null
  // A number in words is a figure in what was read: `ten medlars`.
  const whole = from === null ? undefined : [typed, plantList(typed)].find((each) => each.includes(from))
  const text = from === null || whole === undefined ? as : whole.replace(from, () => as)
  if (!isFood) return lineWith(call, { [option]: text })
  // Whose days nobody knows can't be planned towards a day.
  const { 'unknown-ok': _, 'ready-by': _towards, days = DAYS, ...options } = call.options
  return lineWith({ ...call, options }, { [option]: text, 'unknown-ok': 'yes', ...(takesDays && { days }) })
}

const isOf = <Key extends keyof AllProblems>(
  problem: Problem,
  key: Key,
): problem is Problem & { values: AllProblems[Key] } => problem.problem === key

/** A problem that tells what to type, with the whole line to type. */
export const withLine = (problem: Problem, call: Invocation): Problem => {
  const filled = (retype: Retype, isFood: boolean): Retype => ({
    ...retype,
    line: retypedLine(retype, problem.option, call, isFood),
  })
  if (isOf(problem, 'garden_botanical')) {
    const { values } = problem
    return { ...problem, values: { ...values, retype: filled(values.retype, false) } }
  }
  if (!isOf(problem, 'unknown_botanical') || problem.values.food === null) return problem
  const { values } = problem
  const food = { ...problem.values.food, retype: filled(problem.values.food.retype, true) }
  return { ...problem, values: { ...values, food } }
}
