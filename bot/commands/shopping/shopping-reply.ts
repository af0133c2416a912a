import type { JarState } from '../../../core/jar/state/jar-state.ts'
import { parseVolume } from '../../../core/quantity/read/parse-volume.ts'
import { parseBottles } from '../../../core/recipe/plan/parse-bottles.ts'
import type { Needs } from '../../../core/shopping/needs.ts'
import { parseHave } from '../../../core/shopping/parse-have.ts'
import { type ShoppingList, shoppingList, type VesselsToBuy } from '../../../core/shopping/shopping-list.ts'
import type { Sold } from '../../../core/shopping/sold.ts'
import { call } from '../../calls/call.ts'
import type { InputOf } from '../../calls/signatures.ts'
import { inMore } from '../../chat/depth.ts'
import type { Action, Data, Reply, Row } from '../../chat/reply.ts'
import type { Kitchen } from '../../text/messages/kitchen.ts'
import type { ShopFor, ShopItem } from '../../text/messages/shopping.ts'
import type { Message } from '../../text/words.ts'
import { kitchenOfJars } from '../jar/known/jar-kitchen.ts'
import { assumptionNotes } from '../options/input-units.ts'
import { usualBottleIn } from '../options/usual-bottles.ts'
import { note } from '../reply/outcome-reply.ts'

type Input = InputOf<'shopping'>

/** A batch and what it takes. */
export interface BatchNeeds {
  readonly batch: ShopFor
  readonly needs: Needs
}

/** What a list is made of, and what is to be said of it. */
interface Shopped {
  readonly batches: readonly BatchNeeds[]
  /** The jars among them. */
  readonly stories: readonly JarState[]
  readonly list: ShoppingList
  /** In whose measures it is told; left out: metric. */
  readonly kitchen?: Kitchen | undefined
  readonly sold: Sold
  /** Jars that are done. */
  readonly done: readonly string[]
  /** Jars of which nobody can tell how much sugar they take. */
  readonly sugarUnknown: readonly string[]
  readonly actions: readonly Action[]
  /** Some jar's syrup is as expected. */
  readonly isExpected: boolean
}

/** A part of a list: what is to be bought of it, or what there is enough of. */
const vesselItem = (
  kind: 'bottles' | 'jars',
  vessels: readonly VesselsToBuy[],
  isToBuy: boolean,
): readonly ShopItem[] => {
  const wanted = vessels.filter(({ buyCount }) => buyCount > 0 === isToBuy)
  return wanted.length === 0 ? [] : [{ kind, vessels: wanted }]
}

/** The things of a list that are to be bought, or those of which there is enough. */
function itemsOf({ plants, spirits, sweeteners, bottles, jars }: ShoppingList, isToBuy: boolean): readonly ShopItem[] {
  const wanted = (buys: number): boolean => buys > 0 === isToBuy
  return [
    ...plants.flatMap((plant): readonly ShopItem[] =>
      wanted(plant.buyCount ?? plant.buyG) ? [{ kind: 'plant', plant }] : [],
    ),
    ...spirits.flatMap((spirit): readonly ShopItem[] => (wanted(spirit.count) ? [{ kind: 'spirit', spirit }] : [])),
    ...sweeteners.flatMap((sweetener): readonly ShopItem[] =>
      wanted(sweetener.buyG) ? [{ kind: 'sweetener', sweetener }] : [],
    ),
    ...vesselItem('bottles', bottles, isToBuy),
    ...vesselItem('jars', jars, isToBuy),
  ]
}

const strainingOf = ({ isClothWanted, isPaperWanted }: ShoppingList): readonly ShopItem[] =>
  isClothWanted || isPaperWanted ? [{ kind: 'straining', isClothWanted, isPaperWanted }] : []

const toBuyOf = (list: ShoppingList): readonly ShopItem[] => [...itemsOf(list, true), ...strainingOf(list)]

const itemRow = (item: ShopItem): Row => ({
  label: { group: 'rows', key: 'shop_item', values: item },
  cell: { group: 'cells', key: 'shop_item', values: item },
})

/** What each batch takes of it; of one alone the list says so already. */
const batchRows = ({ batches, sold }: Shopped): readonly Row[] =>
  batches.length < 2
    ? []
    : batches.map(({ batch, needs }) => {
        const items = itemsOf(shoppingList([needs], [], sold), true)
        return {
          label: { group: 'rows', key: 'shop_for', values: batch },
          cell: { group: 'cells', key: 'shop_for', values: { items } },
        }
      })

type Assumed = Extract<Message<'notes'>, { key: 'shopping_assumed' }>

/** What many have at home. */
const AT_HAND = '500 g sugar + 4 bottles of 500 ml'

/** How things were counted that nobody said; nothing where none of them is on the list. */
function assumedNotes(input: Input, { list, sold, batches, kitchen }: Shopped): readonly Assumed[] {
  const isPlanned = batches.some(({ needs }) => needs.jars.length > 0)
  const bottleMl =
    input.bottles === undefined && isPlanned && list.bottles.some(({ buyCount }) => buyCount > 0)
      ? usualBottleIn(kitchen)
      : null
  const spiritMl =
    input['spirit-size'] === undefined && list.spirits.some(({ count }) => count > 0) ? sold.spiritMl : []
  const sugarG = list.sweeteners.some(({ bags }) => bags !== null && bags > 0) ? sold.sugarG : null
  if (bottleMl === null && spiritMl.length === 0 && sugarG === null) return []
  return [{ group: 'notes', key: 'shopping_assumed', values: { spiritMl, bottleMl, sugarG } }]
}

const named = (key: 'shopping_jar_done' | 'shopping_sugar_unknown', jars: readonly string[]) =>
  jars.length === 0 ? [] : [{ group: 'notes', key, values: { jars } } as const]

function notesOf(input: Input, shopped: Shopped): readonly Message<'notes'>[] {
  const { list, done, sugarUnknown } = shopped
  return [
    ...named('shopping_jar_done', done),
    ...named('shopping_sugar_unknown', sugarUnknown),
    ...(list.notNeeded.length === 0
      ? []
      : [{ group: 'notes', key: 'shopping_not_needed', values: { typed: list.notNeeded } } as const]),
    ...assumedNotes(input, shopped),
  ]
}

/** The same list in other sizes, where they were assumed. */
function otherSizes(input: Input, assumed: ReturnType<typeof assumedNotes>): readonly Message<'notes'>[] {
  return assumed.flatMap(({ values: { bottleMl, spiritMl } }) => {
    if (bottleMl === null && spiritMl.length === 0) return []
    const other = bottleMl === null ? { 'spirit-size': parseVolume('500 ml') } : { bottles: parseBottles('250 ml') }
    return [{ group: 'notes', key: 'shopping_other_sizes', values: { line: call('shopping', { ...input, ...other }) } }]
  })
}

function deeperNotes(input: Input, shopped: Shopped): readonly Message<'notes'>[] {
  const { list, isExpected } = shopped
  const enough = itemsOf(list, false)
  return [
    ...(enough.length === 0 ? [] : [{ group: 'notes', key: 'shopping_enough', values: { items: enough } } as const]),
    ...(isExpected ? [note('shopping_by_expectation')] : []),
    ...otherSizes(input, assumedNotes(input, shopped)),
    ...(input.have === undefined && itemsOf(list, true).length > 0
      ? [
          {
            group: 'notes',
            key: 'shopping_at_home',
            values: { line: call('shopping', { ...input, have: { typed: AT_HAND, is: parseHave(AT_HAND) } }) },
          } as const,
        ]
      : []),
    ...assumptionNotes(input),
  ]
}

const listData = (list: ShoppingList): { readonly [name: string]: Data } => ({
  plants: list.plants.map((plant) => ({ ...plant })),
  spirits: list.spirits.map((spirit) => ({ ...spirit })),
  sweeteners: list.sweeteners.map((sweetener) => ({ ...sweetener })),
  bottles: list.bottles.map((vessels) => ({ ...vessels })),
  jars: list.jars.map((vessels) => ({ ...vessels })),
  cloth: list.isClothWanted,
  filters: list.isPaperWanted,
  notNeeded: list.notNeeded,
})

/** One list: each thing once, as a shop sells it; one question deeper what each batch takes of it. */
export function shoppingReply(input: Input, shopped: Shopped): Reply {
  const { batches, list, sugarUnknown } = shopped
  const toBuy = toBuyOf(list)
  const named = batches.map(({ batch }) => batch)
  return {
    headline: {
      group: 'headlines',
      key: 'shopping',
      values: { count: toBuy.length, batches: named },
    },
    table: [...toBuy.map(itemRow), ...inMore(batchRows(shopped))],
    sure: [],
    notes: [...notesOf(input, shopped), ...inMore(deeperNotes(input, shopped))],
    cautions: [],
    actions: inMore(shopped.actions),
    data: { batches: named.map((batch) => ({ ...batch })), ...listData(list), sugarUnknown },
    kitchen: kitchenOfJars(input, shopped.stories),
  }
}
