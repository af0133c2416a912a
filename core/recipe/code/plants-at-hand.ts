import type { Botanical } from '../../botanical/botanical.ts'
import { DomainError } from '../../domain-error.ts'
import { massG } from '../../quantity/measured/precision.ts'
import type { Batch } from '../batch.ts'
import { botanicalOf, isKnownPlant } from '../plan/batch-wish.ts'
import type { FoundPlant, PlantsRead } from '../plan/find-plants.ts'
import type { TypedPlant } from '../plan/parse-plants.ts'
import { weighPieces } from '../plan/weigh-pieces.ts'
import type { AtHand } from './plan-recipe.ts'

/** The same plant in the same form; grams of one whose form nobody said are of the recipe's. */
const isMeant = ({ botanical, saidState, count }: FoundPlant, plant: Botanical): boolean =>
  botanical.id === plant.id && (botanical.form.state === plant.form.state || (saidState === null && count === null))

const plantsOf = ({ plants }: Batch): readonly Botanical[] => plants.filter(isKnownPlant).map(botanicalOf)

const named = (batch: Batch) => plantsOf(batch).map(({ id, form }) => ({ id, state: form.state }))

/** What `of:` says that there is of a recipe's plants; throws `not_in_recipe`, `plant_without_amount`, `amount_of_which`. */
export function plantsAtHand({ plants, unknown, nameless }: PlantsRead, batch: Batch): AtHand['plants'] {
  if (nameless !== undefined) return [onlyPlant(nameless, batch)]
  const stranger = (typed: string) => new DomainError('bad_value', 'not_in_recipe', { typed, plants: named(batch) })
  const [first] = unknown
  if (first !== undefined) throw stranger(first.typed.typed)
  return plants.map((found) => {
    const index = plantsOf(batch).findIndex((plant) => isMeant(found, plant))
    const { typed } = found.typed
    if (index === -1) throw stranger(typed)
    if (found.massG === null) throw new DomainError('bad_value', 'plant_without_amount', { typed })
    return { index, massG: found.massG.value }
  })
}

/** So much of the recipe's one plant. */
function onlyPlant({ amount, kind, typed }: TypedPlant, batch: Batch): AtHand['plants'][number] {
  const [plant, ...others] = plantsOf(batch)
  if (plant === undefined || others.length > 0 || amount === null) {
    throw new DomainError('bad_value', 'amount_of_which', { typed, plants: named(batch) })
  }
  if (amount.kind === 'mass') return { index: 0, massG: massG(amount).value }
  const { count, piece } = amount
  return { index: 0, massG: weighPieces(plant, { count, piece, kind }, typed).value }
}
