import type { MaterialId } from '../quantity/materials.ts'
import type { TypedMoney } from './money.ts'

/** Prices that one person may have. */
export const MOST_PRICES = 100
/** Characters of a part of one. */
export const MOST_PRICE_CHARACTERS = 60

/** A price as its maker gave it, in their own words. */
export interface Price {
  /** What it is of: `lemons`, `spirit 95%`. */
  readonly of: string
  /** With its currency: `€4.50`. */
  readonly amount: string
  /** For how much: `kg`, `700 ml`, `each`. */
  readonly per: string
}

/** What a price is of. */
export type Priced =
  /** The peel by itself, where the fruit is usually bought. */
  | { readonly kind: 'plant'; readonly id: string; readonly isDried: boolean; readonly isPeel: boolean }
  /** Of a food that is not in the catalogue. */
  | { readonly kind: 'food'; readonly name: string }
  /** Null strength: of any that has no price of its own; null drink: of any spirit, else `gin`. */
  | { readonly kind: 'spirit'; readonly abvPercent: number | null; readonly drink: string | null }
  | { readonly kind: 'sweetener'; readonly material: MaterialId }
  /** Null: of any size that has no price of its own. */
  | { readonly kind: 'bottle'; readonly volumeMl: number | null }

/** How much a price is for. */
export interface Per {
  readonly unit: 'g' | 'ml' | 'piece'
  readonly amount: number
}

/** A price that was read. */
export interface PriceRead {
  readonly price: Price
  readonly priced: Priced
  readonly money: TypedMoney
  readonly per: Per
}

/** One of `prices:`: a price, a `?` in its place, or that there is none any more. */
export type PriceTyped =
  | ({ readonly kind: 'given' } & PriceRead)
  | { readonly kind: 'asked' | 'none'; readonly of: string; readonly per: string; readonly priced: Priced }

/** What tells one priced thing from another. */
export function pricedKey(priced: Priced): string {
  switch (priced.kind) {
    case 'plant':
      return `plant ${priced.id} ${priced.isDried} ${priced.isPeel}`
    case 'food':
      return `food ${priced.name}`
    case 'spirit':
      return `spirit ${priced.abvPercent?.toFixed(1) ?? 'any'} ${priced.drink ?? 'any'}`
    case 'sweetener':
      return `sweetener ${priced.material}`
    case 'bottle':
      return `bottle ${priced.volumeMl?.toFixed(0) ?? 'any'}`
  }
}
