import type { PriceTyped } from '../../core/cost/price.ts'
import { parsePrices, writePriceTyped } from '../../core/cost/read-price.ts'
import { option } from './option.ts'

/** What only costs take. */
export const costOptions = {
  prices: option({
    read: parsePrices,
    write: (prices: readonly PriceTyped[]) => prices.map(writePriceTyped).join(' + '),
    most: 600,
  }),
}
