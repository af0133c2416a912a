import type { Mass } from '../../../core/quantity/quantities.ts'
import { massAt } from '../../../core/quantity/read/amount-at.ts'
import { expectEnd, readText } from '../../../core/quantity/read/tokens.ts'

/** A mass of 0.01 g to 1,000 kg: `0,5 kg`, `1 lb 4 oz`, `2 etti`. */
export const parseMass = (text: string): Mass => {
  const typed = readText(text, 'mass')
  const { amount, next } = massAt(typed, 0)
  expectEnd(typed, next)
  return amount
}
