import { botanicalById } from '../botanical/catalogue/catalogue.ts'
import { middle } from '../botanical/catalogue/piece-mass.ts'
import { kindOfDrink } from '../botanical/drink/drink-said.ts'
import { nameKey } from '../jar/entry/jar-name.ts'
import { US_FLUID_OUNCE_ML } from '../quantity/customary.ts'
import { type Currency, costOf, currencyKey, type Money, shareOf, sumsOf } from './money.ts'
import type { Priced, PriceRead } from './price.ts'
import type { Used, UsedItem } from './used.ts'

/** A thing on the bill. */
export interface CostLine {
  readonly item: UsedItem
  /** Null where its maker has given none that fits. */
  readonly price: PriceRead | null
  readonly money: Money | null
  /** Fruit was weighed by what one of it usually weighs. */
  readonly isByUsualWeight: boolean
}

export interface Cost {
  readonly lines: readonly CostLine[]
  /** Of what has a price, each currency by itself; empty where nothing has. */
  readonly total: readonly Money[]
  readonly missing: readonly UsedItem[]
  /** Filled, the bottle itself with it, for each size. */
  readonly perBottle: readonly { readonly volumeMl: number; readonly sums: readonly Money[] }[]
  /** Of the liquid alone. */
  readonly per100Ml: readonly Money[]
  /** The same of a US fluid ounce. */
  readonly perFluidOunce: readonly Money[]
}

/** As labels say the strength of one spirit, % vol apart. */
const SAME_PERCENT = 1

/** How far one drink is from the other, 0 to 3, as its maker calls both; null where gin is the one and rum the other. */
function otherDrink(used: string | null, priced: string | null): number | null {
  if (used === priced) return 0
  if (used !== null && priced !== null) return kindOfDrink(used) === kindOfDrink(priced) ? 1 : null
  return priced === null ? 2 : 3
}

/** From here on no spirit is sold as vodka or gin, % vol: what is stronger and has no name is neutral spirit. Common practice, no source. */
const MOST_NAMED_PERCENT = 60

/** How well a price is of an item; null where it is not of it. */
function distance(item: UsedItem, priced: Priced): number | null {
  if (item.kind === 'plant' && priced.kind === 'plant') {
    return item.plant.id === priced.id && item.plant.isDried === priced.isDried ? 0 : null
  }
  if (item.kind === 'plant' && priced.kind === 'food') {
    return item.plant.id === null && nameKey(item.plant.name) === priced.name ? 0 : null
  }
  if (item.kind === 'spirit' && priced.kind === 'spirit') {
    const other = otherDrink(item.spirit.drink, priced.drink)
    if (other === null) return null
    if (priced.abvPercent === null) {
      const isTooStrong = item.spirit.abvPercent > MOST_NAMED_PERCENT
      return isTooStrong && priced.drink !== null && item.spirit.drink === null ? null : 100 * other + 10
    }
    const apart = Math.abs(priced.abvPercent - item.spirit.abvPercent)
    return apart <= SAME_PERCENT + 1e-6 ? 100 * other + apart : null
  }
  if (item.kind === 'sweetener' && priced.kind === 'sweetener') {
    return item.sweetener.material === priced.material ? 0 : null
  }
  if (item.kind === 'bottles' && priced.kind === 'bottle') {
    if (priced.volumeMl === null) return 100
    return Math.abs(priced.volumeMl - item.vessels.volumeMl) < 0.5 ? 0 : null
  }
  return null
}

/** Prices of what is not in the batch at all. */
export const pricesOfNothing = ({ items }: Pick<Used, 'items'>, prices: readonly PriceRead[]): readonly PriceRead[] =>
  prices.filter(({ priced }) => items.every((item) => distance(item, priced) === null))

interface Amount {
  readonly amount: number
  readonly isByUsualWeight: boolean
}

/** How much of an item there is in the unit that it is priced in; null where that cannot be told. */
function amountIn(item: UsedItem, { priced, per: { unit } }: PriceRead): Amount | null {
  const sure = (amount: number): Amount => ({ amount, isByUsualWeight: false })
  switch (item.kind) {
    case 'plant': {
      const { id, count, massG, ofZest } = item.plant
      if (unit === 'piece') return count === null ? null : sure(count)
      if (unit !== 'g') return null
      const isPeelPriced = priced.kind === 'plant' && priced.isPeel
      if (!ofZest || id === null || count === null || isPeelPriced) return sure(massG)
      // The peel alone goes in, the whole fruit is paid.
      const { fruitG } = botanicalById(id)
      return fruitG === null ? null : { amount: count * middle(fruitG), isByUsualWeight: true }
    }
    case 'spirit':
      return unit === 'ml' ? sure(item.spirit.volumeMl) : null
    case 'sweetener':
      return unit === 'g' ? sure(item.sweetener.massG) : null
    case 'bottles':
      return unit === 'piece' ? sure(item.vessels.count) : null
  }
}

function lineOf(item: UsedItem, prices: readonly PriceRead[]): CostLine {
  const fitting = prices
    .flatMap((price) => {
      const far = distance(item, price.priced)
      const much = far === null ? null : amountIn(item, price)
      return far === null || much === null ? [] : [{ price, far, much }]
    })
    .toSorted((one, other) => one.far - other.far)
  const [best] = fitting
  if (best === undefined) return { item, price: null, money: null, isByUsualWeight: false }
  const { price, much } = best
  const money = costOf(price.money, much.amount, price.per.amount)
  return { item, price, money, isByUsualWeight: much.isByUsualWeight }
}

const moneyIn = (lines: readonly CostLine[]): readonly Money[] => lines.flatMap(({ money }) => money ?? [])

/** The prices with each currency as it was typed first: `£18` and `2 quid` are both pounds. */
function asFirstTyped(prices: readonly PriceRead[]): readonly PriceRead[] {
  const first = new Map<string, Currency>()
  return prices.map((each) => {
    const { currency } = each.money
    const key = currencyKey(currency)
    // What none was said of is told as it is.
    const as = key === '' ? currency : (first.get(key) ?? currency)
    first.set(key, as)
    return { ...each, money: { ...each.money, currency: { ...as, isComma: currency.isComma } } }
  })
}

/** What a batch costs of its maker's own prices; what has none is named, and not in the sums. */
export function costOfUsed({ items, volumeMl }: Used, told: readonly PriceRead[]): Cost {
  const prices = asFirstTyped(told)
  const lines = items.map((item) => lineOf(item, prices))
  const liquid = sumsOf(moneyIn(lines.filter(({ item }) => item.kind !== 'bottles')))
  const bottles = lines.filter(({ item }) => item.kind === 'bottles')
  const shares = (partMl: number): readonly Money[] =>
    volumeMl > 0 ? liquid.map((sum) => shareOf(sum, partMl, volumeMl)) : []
  return {
    lines,
    total: sumsOf(moneyIn(lines)),
    missing: lines.filter(({ money }) => money === null).map(({ item }) => item),
    perBottle: bottles.flatMap(({ item, price }) => {
      if (item.kind !== 'bottles') return []
      const own = price === null ? [] : [costOf(price.money, 1, price.per.amount)]
      return [{ volumeMl: item.vessels.volumeMl, sums: sumsOf([...shares(item.vessels.volumeMl), ...own]) }]
    }),
    per100Ml: shares(100),
    perFluidOunce: shares(US_FLUID_OUNCE_ML),
  }
}
