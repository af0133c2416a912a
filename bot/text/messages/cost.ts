import type { CostLine } from '../../../core/cost/cost.ts'
import type { Money } from '../../../core/cost/money.ts'
import type { Price } from '../../../core/cost/price.ts'
import type { UsedItem } from '../../../core/cost/used.ts'
import type { Plain } from './plain.ts'
import type { ShopFor } from './shopping.ts'

export interface CostMessages {
  headlines: Plain<'cost_no_prices' | 'cost_prices_gone'> & {
    /** `total`: each currency by itself; empty where nothing has a price. */
    cost: { readonly batch: ShopFor; readonly total: readonly Money[]; readonly missing: readonly UsedItem[] }
    cost_each: {
      readonly perBottle: readonly { readonly volumeMl: number; readonly sums: readonly Money[] }[]
      readonly per100Ml: readonly Money[]
      /** The same of a US fluid ounce. */
      readonly perFluidOunce: readonly Money[]
      /** Everything has a price. */
      readonly isAll: boolean
      /** A glass, ml, that is told in their place. */
      readonly glassMl?: number
    }
    cost_prices: { readonly count: number }
    /** Prices that were given just now, and things that have none any more. */
    cost_noted: { readonly given: readonly Price[]; readonly gone: readonly string[] }
  }
  rows: { cost_item: UsedItem; cost_price: Price }
  cells: { cost_item: CostLine; cost_price: Price }
  notes: Plain<'cost_expected' | 'cost_counted' | 'cost_currencies'> & {
    /** Fruit by what one usually weighs. */
    cost_fruit: { readonly fruit: readonly { readonly id: string; readonly eachG: number }[] }
    /** Priced without a currency. */
    cost_currency_assumed: { readonly of: readonly string[]; readonly currency: string }
    cost_poured: { readonly from: readonly string[] }
    /** Priced just now, and not in the batch. */
    cost_not_in_it: { readonly of: readonly string[]; readonly batch: ShopFor }
    /** Kept, and not understood any more. */
    cost_unread: { readonly of: readonly string[] }
  }
  actions: Plain<'cost_missing' | 'cost_prices'> & { cost_of: { readonly name: string } }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly cost: CostMessages
  }
}
