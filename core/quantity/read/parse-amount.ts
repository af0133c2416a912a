import type { Mass, Volume } from '../quantities.ts'
import { amountAt } from './amount-at.ts'
import { expectEnd, readText } from './tokens.ts'

/** A volume or a mass. Bare `oz` could be either and is asked back; `fl oz` and `oz weight` are not. */
export const parseAmount = (text: string): Mass | Volume => {
  const typed = readText(text, 'amount')
  const { amount, next } = amountAt(typed, 0)
  expectEnd(typed, next)
  return amount
}
