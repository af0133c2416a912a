import type { Sentence } from '../bits/bit.ts'
import type { CallRead } from '../frames/reading.ts'

const DRINK = /^(?:liqueurs?|cordials?)$/

/** `A litre of raspberry liqueur, and orange liqueur too`: the plan of each; null where it is one drink of all its plants. */
export function twoDrinks({ options }: CallRead, { bits, typed }: Sentence): readonly CallRead[] | null {
  const { of = '', ...others } = options
  const isDrink = (at: number): boolean => DRINK.test(typed.tokens[at]?.text ?? '')
  // Some plants are named by their liqueur: `orange liqueur`.
  const named = bits.filter(({ kind, to }) => kind === 'plant' && (isDrink(to) || isDrink(to - 1)))
  const items = of.split('+').map((item) => item.trim())
  if (named.length !== 2 || items.length !== 2) return null
  return items.map((item) => ({ command: 'plan', options: { of: item, ...others } }))
}
