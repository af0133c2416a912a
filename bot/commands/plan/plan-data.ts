import type { Botanical, PlantState } from '../../../core/botanical/botanical.ts'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { middle } from '../../../core/botanical/catalogue/piece-mass.ts'
import { mayBeDried } from '../../../core/botanical/find/in-form.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { Strength, SugarRead } from '../../../core/quantity/quantities.ts'
import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { amountSaid, sugarSaid, writeStrength } from '../../../core/quantity/write/write-quantity.ts'
import type { DrinkPart } from '../../../core/recipe/drinks-in.ts'
import type { FoundPlant, PlantsRead } from '../../../core/recipe/plan/find-plants.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { Sweetening } from '../../../core/recipe/sweetening.ts'
import type { Given } from '../../calls/option.ts'
import type { Data } from '../../chat/reply.ts'
import type { SpiritSaid, SweeteningSaid } from '../../text/messages/ingredients.ts'
import type { BatchSaid } from '../../text/messages/plan.ts'
import { measuredData, outcomeData } from '../reply/outcome-reply.ts'
import { sweetenerData } from '../reply/sweetener-notes.ts'

export interface PlanInput {
  readonly of: Given<PlantsRead>
  readonly bottles?: unknown
  readonly spirit?: Given<readonly DrinkPart[]> | undefined
  readonly strength?: Given<Strength> | undefined
  readonly days?: unknown
  readonly sugar?: Given<SugarRead> | undefined
}

/** Fruit to buy for the zest, where the plant is taken as zest and no grams were given. */
const countOf = ({ botanical, count }: Plan['plants'][number], massG: Measured, said: FoundPlant): number | null => {
  const zest = botanical.zestGPerFruit
  if (count !== null || said.massG !== null || zest === null) return count
  return Math.ceil(massG.value / middle(zest.strips) - 1e-9)
}

/** Whether it may be fresh or dried, and nobody said. */
export const isFormTaken = ({ saidState, botanical, typed }: FoundPlant): boolean =>
  saidState === null && mayBeDried(botanical, typed.amount?.kind === 'mass')

/** Fresh or dried, where nobody said which, or it is not as the catalogue has it. */
const stateToSay = ({ id, form }: Botanical, said: FoundPlant): PlantState | undefined =>
  isFormTaken(said) || form.state !== botanicalById(id).form.state ? form.state : undefined

type Said = BatchSaid['plants'][number]

/** A weight in the unit in which it was typed; ounces of a plant are no volume, so that nothing has to say so. */
const weightTyped = ({ typed: { amount } }: FoundPlant): string | undefined =>
  amount?.kind === 'mass'
    ? amountSaid({ ...amount, unit: amount.unit === 'oz' ? 'oz_weight' : amount.unit })?.replace(/ weight$/, '')
    : undefined

/** The plants of a plan, in the order typed; without id, one that is not in the catalogue. */
export function plantsSaid(input: PlanInput, plan: Plan, isAsTyped: boolean) {
  const known = plan.plants.map((plant, index) => {
    const said = input.of.is.plants[index]!
    const count = countOf(plant, plant.massG, said)
    return {
      id: plant.botanical.id,
      massG: plant.massG,
      count,
      unit: plant.words?.unit ?? null,
      typed: isAsTyped ? weightTyped(said) : undefined,
      state: stateToSay(plant.botanical, said),
      ofZest: said.ofZest || (said.massG === null && count !== null),
    }
  })
  return plan.unknown.reduce<readonly Said[]>(
    (said, { name, massG, at }) => said.toSpliced(at, 0, { id: null, name, massG }),
    known,
  )
}

/** The last bits of a sum. */
const SAME_SHARE = 1e-6

const isAllOf = ({ amount: { value } }: SpiritSaid, { amount }: DrinkPart): boolean =>
  Math.abs(value / (amount.kind === 'mass' ? amount.massG : amount.volumeMl) - 1) < SAME_SHARE

const isAsStrong = ({ abvPercent: { value } }: SpiritSaid, strength: Strength): boolean =>
  Math.abs(value - strength.abvPercent) < 100 * SAME_SHARE

/** The spirits of a plan or a jar in the units in which they were typed. */
export function spiritsSaid(
  { spirit, strength }: Pick<PlanInput, 'spirit' | 'strength'>,
  spirits: readonly SpiritSaid[],
): readonly SpiritSaid[] {
  return spirits.map((said, index) => {
    const part = spirit?.is[index]
    // Of a recipe less may go in than there is.
    if (part === undefined || !isAllOf(said, part)) return said
    // A jar's may have been put right since.
    const strong = [part.strength, strength?.is].find((each) => each != null && isAsStrong(said, each)) ?? null
    const amount = amountSaid(part.amount)
    return amount === null
      ? said
      : { ...said, typed: { amount, strength: strong === null ? null : writeStrength(strong) } }
  })
}

/** What sweetens a plan; what was typed of it, where all of it was, in the unit in which it was. */
export function sweeteningsSaid({ sugar }: PlanInput, sweetenings: readonly Sweetening[]): readonly SweeteningSaid[] {
  return sweetenings.map((each) => {
    const typed = (sugar?.is.amounts ?? []).filter(({ material }) => material === each.material)
    const massG = typed.reduce((sum, one) => sum + one.massG, 0)
    if (typed.length === 0 || Math.abs(massG / each.massG.value - 1) > SAME_SHARE) return each
    const texts = typed.map(sugarSaid)
    return texts.includes(null) ? each : { ...each, typed: texts.join(' + ') }
  })
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
    filler: plan.filler ?? 'water',
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
