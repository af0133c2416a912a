import type { PlantIn } from '../../core/jar/event.ts'
import { type Allergen, allergensOf } from '../../core/label/allergens.ts'

export interface AllergensIn {
  readonly allergens: readonly Allergen[]
  /** Plants outside the catalogue, of which nobody knows. */
  readonly unknown: readonly string[]
}

/** What has to be said of these plants to whoever is offered a glass. */
export const allergensIn = (plants: readonly Pick<PlantIn, 'id' | 'name'>[]): AllergensIn => ({
  allergens: allergensOf(plants.flatMap(({ id }) => (id === null ? [] : [id]))),
  unknown: plants.flatMap(({ id, name }) => (id === null ? [name] : [])),
})
