import { readPlants } from '../../../core/recipe/plan/find-plants.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import { weighedOut } from '../../../core/recipe/tool-precision.ts'
import { call } from '../../calls/call.ts'
import type { Given } from '../../calls/option.ts'
import type { InputOf } from '../../calls/signatures.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import type { PlantSaid } from '../../text/messages/ingredients.ts'
import { plantsSaid } from './plan-data.ts'
import type { WithPlants } from './plan-wish.ts'
import { weighedText } from './written-amounts.ts'

/** A plant whose usual amount grew with the water, and how much of it goes into as much drink without that. */
interface Grown {
  readonly at: number
  readonly taken: PlantSaid
  readonly enough: PlantSaid
}

/** Less is not worth a word: nobody tastes it. Judgement. */
const LEAST_TIMES = 1.15

/** A usual amount goes by the litre in which it steeps, and a glass gets the more of it the more water went in first. */
function grownIn(input: WithPlants, plan: Plan): readonly Grown[] {
  const { steeping, spiritMl, steep, plants } = plan
  const times = steep.pouredMl / spiritMl.value
  if (steeping.waterG.value === 0 || times < LEAST_TIMES) return []
  const said = plantsSaid(input, plan, false)
  return plants.flatMap(({ botanical }, at): readonly Grown[] => {
    const taken = said.find(({ id }) => id === botanical.id)
    if (input.of.is.plants[at]?.massG !== null || taken === undefined || taken.id === null) return []
    const massG = weighedOut(taken.massG.value / times)
    const count = taken.count === null ? null : Math.ceil(taken.count / times - 1e-9)
    return count === taken.count && count !== null ? [] : [{ at, taken, enough: { ...taken, massG, count } }]
  })
}

/** Nobody need buy more for water: what is enough, as the line that plans it. */
export function dilutedFirst(
  input: InputOf<'plan'> & WithPlants,
  plan: Plan,
): { readonly notes: Reply['notes']; readonly actions: readonly Action[] } {
  const grown = input.from === undefined && input.of.is.unknown.length === 0 ? grownIn(input, plan) : []
  const [first] = grown
  if (first === undefined) return { notes: [], actions: [] }
  const texts = input.of.is.plants.map(({ typed }, at) => {
    const { enough } = grown.find((each) => each.at === at) ?? {}
    if (enough === undefined) return typed.typed
    return `${enough.count === null ? `${weighedText(enough.massG.value)} g` : enough.count} ${typed.noun}`
  })
  const typed = texts.join(' + ')
  const of: Given<ReturnType<typeof readPlants>> = { typed, is: readPlants(typed) }
  const { taken, enough } = first
  return {
    notes: [{ group: 'notes', key: 'plan_diluted_first', values: { taken, enough } }],
    actions: [
      {
        label: { group: 'actions', key: 'plan_with', values: { plant: enough } },
        call: call('plan', { ...input, of }),
      },
    ],
  }
}
