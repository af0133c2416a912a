import type { Sweetness } from '../quantities.ts'
import { headAt } from './measure-at.ts'
import { bareGPerL, styleAt, sweetnessOf } from './sweetness-at.ts'
import { expectEnd, readText } from './tokens.ts'

/** 0 to 1,200 g of sugar in a litre: `250 g/L`, `25 g/100 ml`, `250` (said), `dry`, `everyday`, `rich`. */
export const parseSweetness = (text: string): Sweetness => {
  const typed = readText(text, 'sweetness')
  const { sweetness, next } = styleAt(typed, 0) ?? sweetnessOf(typed, headAt(typed, 0, ['sweetness'], bareGPerL))
  expectEnd(typed, next)
  return sweetness
}
