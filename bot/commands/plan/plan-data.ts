import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { FoundPlant, PlantsRead } from '../../../core/recipe/plan/find-plants.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { Given } from '../../calls/option.ts'
import type { Data } from '../../chat/reply.ts'
import { measuredData, outcomeData } from '../reply/outcome-reply.ts'
import { sweetenerData } from '../reply/sweetener-notes.ts'

export interface PlanInput {
  readonly of: Given<PlantsRead>
  readonly bottles?: unknown
  readonly spirit?: unknown
  readonly strength?: unknown
  readonly days?: unknown
}

/** Fruit to buy for the zest, where the plant is taken as zest and no grams were given. */
const countOf = ({ botanical, count }: Plan['plants'][number], massG: Measured, said: FoundPlant): number | null => {
  const zest = botanical.zestGPerFruit
  if (count !== null || said.massG !== null || zest === null) return count
  return Math.ceil(massG.value / ((zest.strips[0] + zest.strips[1]) / 2) - 1e-9)
}

/** What a plan's first line says of the batch. */
import type { BatchSaid } from '../../text/messages/plan.ts'

type Said = BatchSaid['plants'][number]

/** The plants of a plan, in the order typed; without id, one that is not in the catalogue. */
export function plantsSaid(input: PlanInput, plan: Plan) {
  const known = plan.plants.map((plant, index) => {
    const said = input.of.is.plants[index]!
    const count = countOf(plant, plant.massG, said)
    return {
      id: plant.botanical.id,
      massG: plant.massG,
      count,
      ofZest: said.ofZest || (said.massG === null && count !== null),
    }
  })
  return plan.unknown.reduce<readonly Said[]>(
    (said, { name, massG, at }) => said.toSpliced(at, 0, { id: null, name, massG }),
    known,
  )
}

export function planData(plan: Plan, plants: readonly Said[]): { readonly [name: string]: Data } {
  const { steep, spiritMl, waterMl, waterG, sweetener, sugarG, syrupMl, syrupG, filled, outcome } = plan
  return {
    ...outcomeData(outcome),
    ...measuredData({
      waterMl,
      waterG,
      sugarG,
      syrupMl,
      syrupG,
      spiritMl,
      infusionMl: steep.infusionMl,
      infusionAbvPercent: steep.infusionAbvPercent,
      keptBackMl: steep.keptBackMl,
    }),
    ...sweetenerData(sweetener, sugarG),
    botanicals: plants.map((plant) => {
      return { id: plant.id, ...measuredData({ massG: plant.massG }), count: plant.id === null ? null : plant.count }
    }),
    keeping: plan.keeping,
    jarKeeping: steep.keeping,
    jarMl: steep.jarMl,
    bottles: filled.bottles,
    ...measuredData({ leftoverMl: { value: filled.leftoverMl, plusMinus: outcome.volumeMl.plusMinus } }),
    dates: datesOf(plan),
  }
}

/** Null where nothing is known of a plant but what its maker told. */
function datesOf({ schedule, told }: Plan) {
  const strainOn = told.strainOn === null ? null : isoDay(told.strainOn)
  const start = isoDay(told.start)
  if (schedule === null) return { start, tasteFrom: null, strainFrom: strainOn, strainBy: strainOn, ready: null }
  const { tasteFrom, strainFrom, strainBy, ready } = schedule
  return {
    start,
    tasteFrom: isoDay(tasteFrom),
    strainFrom: isoDay(strainFrom),
    strainBy: isoDay(strainBy),
    ready: isoDay(ready),
  }
}
