import { DomainError } from '../../domain-error.ts'
import type { FoundPlant, PlantsRead } from '../plan/find-plants.ts'
import type { AtHand } from './plan-recipe.ts'
import type { Recipe, RecipePlant } from './recipe.ts'
import { botanicalOf } from './recipe-wish.ts'

/** The same plant in the same form; grams of one whose form nobody said are of the recipe's. */
const isMeant = ({ botanical, saidState, count }: FoundPlant, plant: RecipePlant): boolean =>
  botanical.id === plant.id &&
  (botanical.form.state === botanicalOf(plant).form.state || (saidState === null && count === null))

/** What `of:` says that there is of a recipe's plants; throws `not_in_recipe` and `plant_without_amount`. */
export function plantsAtHand({ plants, unknown }: PlantsRead, recipe: Recipe): AtHand['plants'] {
  const stranger = (typed: string) =>
    new DomainError('bad_value', 'not_in_recipe', {
      typed,
      plants: recipe.plants.map((plant) => ({ id: plant.id, state: botanicalOf(plant).form.state })),
    })
  const [first] = unknown
  if (first !== undefined) throw stranger(first.typed.typed)
  return plants.map((found) => {
    const index = recipe.plants.findIndex((plant) => isMeant(found, plant))
    const { typed } = found.typed
    if (index === -1) throw stranger(typed)
    if (found.massG === null) throw new DomainError('bad_value', 'plant_without_amount', { typed })
    return { index, massG: found.massG.value }
  })
}
