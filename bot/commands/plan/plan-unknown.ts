import type { z } from 'zod'
import { findFood } from '../../../core/botanical/foods/find-food.ts'
import { DomainError } from '../../../core/domain-error.ts'
import type { PlantsRead } from '../../../core/recipe/plan/find-plants.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import { answeredFor, KEPT_ML_PER_G, MOST_WATER_SHARE } from '../../../core/recipe/plan/unknown-plant.ts'
import type { Message } from '../../text/words.ts'
import { note } from '../calculate/outcome-reply.ts'
import type { Given } from '../options/fields.ts'

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
  try {
    unknown.forEach(answeredFor)
  } catch (error) {
    if (error instanceof DomainError) return { option: 'of', error }
    throw error
  }
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

const namesIn = ({ unknown }: Pick<Plan, 'unknown'>): readonly string[] => unknown.map(({ name }) => name)

/** What whoever drinks of these foods may have to know, the worst of it before every other caution. */
export const foodCautions = (names: readonly string[]): readonly Message<'cautions'>[] => {
  const known = names.flatMap((name) => findFood(name)?.food ?? [])
  const notes = [...new Set(known.flatMap((food) => food.notes))]
  return names.length === 0 ? [] : [{ group: 'cautions', key: 'plan_unknown', values: { names, notes } }]
}

export const unknownCautions = (plan: Plan): readonly Message<'cautions'>[] => foodCautions(namesIn(plan))

/** Whose the amounts and days are, and what the ± holds. */
export function unknownNotes(plan: Plan): readonly Message<'notes'>[] {
  if (plan.unknown.length === 0) return []
  const range = {
    waterPercent: 100 * MOST_WATER_SHARE,
    keptMinMlPerG: KEPT_ML_PER_G.min,
    keptMaxMlPerG: KEPT_ML_PER_G.max,
  }
  return [
    { group: 'notes', key: 'plan_unknown_yours', values: { names: namesIn(plan) } },
    ...(plan.told.strainOn === null ? [note('plan_unknown_days')] : []),
    { group: 'notes', key: 'plan_unknown_range', values: range },
  ]
}
