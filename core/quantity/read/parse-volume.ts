import type { Volume } from '../quantities.ts'
import { volumeAt } from './amount-at.ts'
import { expectEnd, readText } from './tokens.ts'

/** A volume of 0.1 ml to 1,000 l: `1,5 L`, `2 cups`, `930±5 ml at 28 C`. Bare `oz` is asked back. */
export const parseVolume = (text: string): Volume => {
  const typed = readText(text, 'volume')
  const { amount, next } = volumeAt(typed, 0)
  expectEnd(typed, next)
  return amount
}
