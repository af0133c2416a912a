import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import type { BotanicalProblems } from '../../../core/botanical/problems.ts'
import type { PlanProblems } from '../../../core/recipe/plan/problems.ts'
import { escaped } from '../../../core/spelling/escaped.ts'
import type { Problem } from './call-outcome.ts'
import { nameTyped } from './jar-for-numbers.ts'

export type Replaced = (whole: string) => string

export const instead =
  (pattern: RegExp | string, text: string): Replaced =>
  (whole) =>
    whole.replace(pattern, () => text)

/** A plant's name that fits several, as each of them, the strongest first. */
export const choicesOf = ({ problem, values }: Problem): readonly Replaced[] => {
  if (problem !== 'unclear_botanical') return []
  const { typed, choices, refused } = values as BotanicalProblems['unclear_botanical']
  if (refused.length > 0) return []
  const byDose = choices.toSorted((one, other) => typicalG(one) - typicalG(other))
  return byDose.map((id) => instead(new RegExp(escaped(typed), 'iu'), nameTyped(id)))
}

/** A small part of the usual dose, g, by which the example for a bit of a plant is written. */
const BIT_SHARE = 0.1

/** A bit of a plant, by weight. */
export const weighedOf = ({ problem, values }: Problem): readonly Replaced[] => {
  if (problem !== 'piece_not_weighed') return []
  const { typed, id } = values as PlanProblems['piece_not_weighed']
  const grams = Number((typicalG(id) * BIT_SHARE).toPrecision(1))
  return [instead(new RegExp(escaped(typed), 'iu'), `${grams} g ${nameTyped(id)}`)]
}

const typicalG = (id: string): number => botanicalById(id).dose.typicalGPerL
