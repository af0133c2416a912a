import type { z } from 'zod'
import { DomainError, domainErrorOf } from '../../core/domain-error.ts'
import type { PlantsRead } from '../../core/recipe/plan/find-plants.ts'
import { answeredFor } from '../../core/recipe/plan/unknown-plant.ts'
import type { Given } from './option.ts'

interface Answers {
  readonly of?: Given<PlantsRead> | undefined
  /** A batch's code: then `of:` tells only what there is of its plants. */
  readonly from?: unknown
  readonly 'unknown-ok'?: Given<boolean> | undefined
  readonly days?: unknown
  readonly 'ready-by'?: unknown
}

/** What stands against a plant that is not in the catalogue, and against what belongs to one where there is none. */
function problemOf(input: Answers): { readonly option: string; readonly error: DomainError } | null {
  if (input.of === undefined || input.from !== undefined) return null
  const { unknown, nameless } = input.of.is
  if (nameless !== undefined) {
    return { option: 'of', error: new DomainError('bad_value', 'plant_not_named', { typed: nameless.typed }) }
  }
  const [first] = unknown
  if (first === undefined) return null
  // What is no food, or still has a question, is said before what only lacks the maker's word.
  const closed = unknown.find(({ food, problem }) => food === null || problem.values.food?.question !== null)
  if (closed !== undefined) return { option: 'of', error: closed.problem }
  if (input['unknown-ok']?.is !== true) return { option: 'of', error: first.problem }
  const unanswered = domainErrorOf(() => unknown.forEach(answeredFor))
  if (unanswered !== null) return { option: 'of', error: unanswered }
  if (input['ready-by'] === undefined) return null
  const error = new DomainError('unreachable', 'ready_by_unknown', { name: first.name })
  return { option: 'ready-by', error }
}

/** For a command's schema, since it takes several options to see. */
export function checkUnknown(input: Answers, context: z.RefinementCtx): void {
  const found = problemOf(input)
  if (found === null) return
  const { option, error } = found
  context.addIssue({ code: 'custom', message: error.message, path: [option], params: { error } })
}

/** The same where plants are put into a jar, which has no code and no day that it is to be ready by. */
export function checkUnknownAlone({ of, 'unknown-ok': isSaid }: Answers, context: z.RefinementCtx): void {
  if (of !== undefined) checkUnknown({ of, 'unknown-ok': isSaid }, context)
}
