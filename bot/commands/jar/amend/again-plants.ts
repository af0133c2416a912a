import type { PlantsRead } from '../../../../core/recipe/plan/find-plants.ts'
import type { Given } from '../../../calls/option.ts'

const typedOf = ({ plants, unknown }: PlantsRead): string =>
  [...plants.map(({ typed }) => typed.typed), ...unknown.map(({ typed }) => typed.typed)].join(' + ')

/** The plants of before, those that are named anew as they are now, and any that were not among them. */
export function plantsAgain(before: Given<PlantsRead> | undefined, said: Given<PlantsRead>): Given<PlantsRead> {
  if (before === undefined) return said
  const [only, another] = before.is.plants
  // `200 g` of the one plant there is.
  if (said.is.nameless !== undefined) {
    return only === undefined || another !== undefined ? said : { ...said, typed: `${said.typed} ${only.typed.noun}` }
  }
  const ids = new Set(said.is.plants.map(({ botanical }) => botanical.id))
  const names = new Set(said.is.unknown.map(({ name }) => name))
  const is: PlantsRead = {
    ...said.is,
    plants: [...before.is.plants.filter(({ botanical }) => !ids.has(botanical.id)), ...said.is.plants],
    unknown: [...before.is.unknown.filter(({ name }) => !names.has(name)), ...said.is.unknown],
  }
  return { typed: typedOf(is), is }
}
