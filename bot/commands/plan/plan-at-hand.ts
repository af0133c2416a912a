import { kindOfDrink } from '../../../core/botanical/drink/drink-said.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { Have } from '../../../core/shopping/have.ts'
import { needsOfPlan } from '../../../core/shopping/needs-of-plan.ts'
import { shoppingList } from '../../../core/shopping/shopping-list.ts'
import { soldIn } from '../../../core/shopping/sold.ts'
import type { BatchAtHand, BatchSaid } from '../../text/messages/plan.ts'

/** Nearer than a label can tell, % vol. */
const SAME_PERCENT = 0.1

interface Split<Item> {
  readonly had: readonly Item[]
  readonly buy: readonly Item[]
  readonly rest: readonly Item[]
}

/** Of each thing whether all of it is there, none, or some: then what is still to be bought. */
function split<Item>(items: readonly Item[], restOf: (item: Item) => Item | 'all' | 'none'): Split<Item> {
  const told = items.map((item) => ({ item, rest: restOf(item) }))
  return {
    had: told.flatMap(({ item, rest }) => (rest === 'none' ? [item] : [])),
    buy: told.flatMap(({ item, rest }) => (rest === 'all' ? [item] : [])),
    rest: told.flatMap(({ rest }) => (rest === 'all' || rest === 'none' ? [] : [rest])),
  }
}

/** So small a part of what is needed is rounding. */
const NOTHING_SHARE = 1e-6

const isAll = (left: number, needed: number): boolean => left >= needed * (1 - NOTHING_SHARE)

/** What a plan takes, parted by what of it is at hand. */
export function planAtHand(
  { plants, spirits, sweetenings }: BatchSaid,
  plan: Plan,
  have: readonly Have[],
): BatchAtHand {
  const list = shoppingList([needsOfPlan(plan, [])], have, soldIn(null))
  const ofPlants = split(plants, (plant) => {
    const need = list.plants.find(({ id, name }) => (plant.id === null ? name === plant.name : id === plant.id))
    const isTouched = have.some((each) => each.kind === 'plant' && each.plant.id === (need?.id ?? null))
    if (need === undefined || !isTouched) return 'all'
    if (need.buyCount === 0 || need.buyG === 0) return 'none'
    const massG = exactly(need.buyG)
    if (plant.id === null) return { ...plant, massG }
    return { ...plant, massG, typed: undefined, count: plant.count === null ? null : need.buyCount }
  })
  const ofSpirits = split(spirits, (spirit) => {
    const need = list.spirits.find(
      ({ abvPercent, drink }) =>
        Math.abs(abvPercent - spirit.abvPercent.value) < SAME_PERCENT && kindOf(drink) === kindOf(spirit.drink),
    )
    if (need === undefined || isAll(need.toBuyMl, need.volumeMl)) return 'all'
    if (need.toBuyMl <= NOTHING_SHARE * need.volumeMl) return 'none'
    return { ...spirit, typed: undefined, by: 'volume' as const, amount: exactly(need.toBuyMl) }
  })
  const ofSugars = split(
    sweetenings.filter(({ massG }) => massG.value > 0),
    (each) => {
      const held = have.flatMap((one) =>
        one.kind === 'sweetener' && one.sweetener.material === each.material ? [one.sweetener.massG] : [],
      )
      if (held.length === 0) return 'all'
      const leftG = each.massG.value - held.reduce<number>((sum, massG) => sum + (massG ?? each.massG.value), 0)
      return leftG <= NOTHING_SHARE * each.massG.value ? 'none' : { ...each, typed: undefined, massG: exactly(leftG) }
    },
  )
  const of = (part: keyof Split<unknown>): BatchSaid => ({
    plants: ofPlants[part],
    spirits: ofSpirits[part],
    sweetenings: ofSugars[part],
  })
  const isUsedUp = (each: Have): boolean =>
    (each.kind === 'plant' && ofPlants.rest.some(({ id }) => id !== null && id === each.plant.id)) ||
    (each.kind === 'spirit' &&
      ofSpirits.rest.some(({ abvPercent }) => Math.abs(abvPercent.value - each.spirit.abvPercent) <= 1)) ||
    (each.kind === 'sweetener' && ofSugars.rest.some(({ material }) => material === each.sweetener.material))
  return {
    had: of('had'),
    partly: have.filter(isUsedUp).map(({ typed }) => typed),
    buy: of('buy'),
    rest: of('rest'),
  }
}

const kindOf = (drink: string | null | undefined): string | null => (drink == null ? null : kindOfDrink(drink))
