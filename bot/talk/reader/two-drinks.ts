import type { Bit, Sentence } from '../bits/bit.ts'
import type { CallRead } from '../frames/reading.ts'

const DRINK = /^(?:liqueurs?|cordials?)$/

/** `A litre of raspberry liqueur, and orange liqueur too`: the plan of each; null where it is one drink of all its plants. */
export function twoDrinks({ options }: CallRead, { bits, typed }: Sentence): readonly CallRead[] | null {
  const { of = '', ...others } = options
  const apart = inOwnSpirits(options, { bits, typed })
  if (apart !== null) return apart
  const isDrink = (at: number): boolean => DRINK.test(typed.tokens[at]?.text ?? '')
  // Some plants are named by their liqueur: `orange liqueur`.
  const named = bits.filter(({ kind, to }) => kind === 'plant' && (isDrink(to) || isDrink(to - 1)))
  const items = of.split('+').map((item) => item.trim())
  if (named.length !== 2 || items.length !== 2) return null
  return items.map((item) => ({ command: 'plan', options: { of: item, ...others } }))
}

const INTO = /^(?:in|into|with|on|nel|nella|con|dentro)$/
const AND = /^(?:and|plus|e|ed|&|,|;)$/

const isSpiritPoured = ({ kind, role }: Bit): boolean =>
  (kind === 'volume' && role !== 'of_water' && role !== 'of_plant' && role !== 'of_sugar') ||
  (kind === 'bottles' && role === 'of_spirit')

/** `10 lemons in a litre of 95% and 400 g raspberries in 70 cl vodka`: each plant lies in a spirit of its own. */
function inOwnSpirits(
  { of = '', spirit = '', ...others }: CallRead['options'],
  { bits, typed }: Pick<Sentence, 'bits' | 'typed'>,
): readonly CallRead[] | null {
  const [plants, spirits] = [of, spirit].map((text) => text.split('+').map((item) => item.trim()))
  if (plants?.length !== 2 || spirits?.length !== 2) return null
  const row = bits.filter((bit) => bit.kind === 'plant' || isSpiritPoured(bit))
  const [one, first, other, second] = row
  const isRow = [one, first, other, second].map((bit) => bit?.kind === 'plant').join() === 'true,false,true,false'
  if (!isRow || row.length !== 4) return null
  const says = (word: RegExp, from: number, to: number): boolean =>
    typed.tokens.slice(from, to).some(({ text }) => word.test(text))
  const isIn = says(INTO, one!.to, first!.from) && says(INTO, other!.to, second!.from)
  if (!isIn || !says(AND, first!.to, other!.from)) return null
  return plants.map((plant, at) => ({ command: 'plan', options: { of: plant, spirit: spirits[at]!, ...others } }))
}
