import type { Strength } from '../quantities.ts'
import { strengthAt } from './strength-at.ts'
import { expectEnd, readText } from './tokens.ts'

/**
 * A strength of 0.1 to 100 % vol: `95%`, `95°`, `95 gradi`, `95` (said), `90.6% at 28 C`; `190 proof` is brought from
 * 60 °F to 20 °C. A number below 1 without a % (`0.95`) is asked back.
 */
export const parseStrength = (text: string): Strength => {
  const typed = readText(text, 'strength')
  const { strength, next } = strengthAt(typed, 0)
  expectEnd(typed, next)
  return strength
}
