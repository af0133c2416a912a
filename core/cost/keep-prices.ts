import { DomainError } from '../domain-error.ts'
import { MOST_PRICES, type Price, type PriceRead, type PriceTyped, pricedKey } from './price.ts'
import { readPrice } from './read-price.ts'

/** Those of the prices kept that can still be read. */
export const pricesRead = (kept: readonly Price[]): readonly PriceRead[] =>
  kept.flatMap((price) => readPrice(price) ?? [])

/** With what was typed: a new price in the place of the old one of the same thing. Throws `price_asked` and `too_many_prices`. */
export function withPrices(kept: readonly Price[], typed: readonly PriceTyped[]): readonly Price[] {
  const asked = typed.flatMap((each) => (each.kind === 'asked' ? [each.of] : []))
  if (asked.length > 0) throw new DomainError('missing_option', 'price_asked', { of: asked })
  const keys = new Set(typed.map(({ priced }) => pricedKey(priced)))
  const others = kept.filter((price) => {
    const read = readPrice(price)
    return read === null || !keys.has(pricedKey(read.priced))
  })
  const given = new Map(
    typed.flatMap((each) => (each.kind === 'given' ? [[pricedKey(each.priced), each.price] as const] : [])),
  )
  const all = [...others, ...given.values()]
  if (all.length > MOST_PRICES) throw new DomainError('limit', 'too_many_prices', { most: MOST_PRICES })
  return all
}
