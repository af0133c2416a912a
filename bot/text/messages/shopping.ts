import type { PlantToBuy, SpiritToBuy, SweetenerToBuy, VesselsToBuy } from '../../../core/shopping/shopping-list.ts'
import type { Call } from '../../calls/call.ts'

/** One line of a shopping list. */
export type ShopItem =
  | { readonly kind: 'plant'; readonly plant: PlantToBuy }
  | { readonly kind: 'spirit'; readonly spirit: SpiritToBuy }
  | { readonly kind: 'sweetener'; readonly sweetener: SweetenerToBuy }
  | { readonly kind: 'bottles' | 'jars'; readonly vessels: readonly VesselsToBuy[] }
  | { readonly kind: 'straining'; readonly isClothWanted: boolean; readonly isPaperWanted: boolean }

/** A batch on the list: a plan by its plants, or a jar by its name. */
export type ShopFor = { readonly plantId: string | null; readonly name: string }

/** How things were counted, where that was not said; empty or null where it makes no difference. */
export interface ShopAssumed {
  readonly spiritMl: readonly number[]
  readonly bottleMl: number | null
  readonly sugarG: number | null
}

export interface ShoppingMessages {
  headlines: {
    /** `count`: how many things there are to buy. */
    shopping: { readonly count: number; readonly batches: readonly ShopFor[] }
    shopping_no_jars: undefined
  }
  rows: { shop_item: ShopItem; shop_for: ShopFor }
  cells: { shop_item: ShopItem; shop_for: { readonly items: readonly ShopItem[] } }
  notes: {
    shopping_assumed: ShopAssumed
    shopping_other_sizes: { readonly line: Call }
    /** There is enough of it at hand. */
    shopping_enough: { readonly items: readonly ShopItem[] }
    /** At hand, as typed, and nothing takes it. */
    shopping_not_needed: { readonly typed: readonly string[] }
    /** Jars of which nobody knows how much sugar they will take. */
    shopping_sugar_unknown: { readonly jars: readonly string[] }
    shopping_jar_done: { readonly jars: readonly string[] }
    shopping_by_expectation: undefined
    shopping_at_home: { readonly line: Call }
  }
  actions: { shopping_cost: undefined; shopping_plan: undefined }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly shopping: ShoppingMessages
  }
}
