import type { Concept } from '../lexicon/lexicon.ts'
import { type Open, type RolesAround, wordsOf } from './attach.ts'

/** Said of a drink that is there, whose sugar is told with it. */
const COMPLAINTS = new Set<Concept>(['too_sweet', 'too_dry', 'too_strong', 'too_weak'])
const HAS = /^(?:with|and|,|has|holds|contains|containing|con|e|contiene)$/
const ADDS = /^(?:add|adding|stir|stirring|more|extra|another|aggiung\p{L}*|altri)$/u

/** `Too strong, I have 1 litre at 38 with 200 g of sugar`: what it has, not what is to go in. */
const isOfDrink = ({ spans, typed: { tokens } }: RolesAround, { from }: Open): boolean =>
  spans.some(({ concept }) => COMPLAINTS.has(concept)) &&
  HAS.test(tokens[from - 1]?.text ?? '') &&
  !tokens.some(({ text }) => ADDS.test(text))

const INSIDE = /^(?:in (?:it|there|that)|inside|already|dentro)\b/

/** No spirit is sold so weak and no liqueur is so strong, % vol; common practice, no source. */
const MOST_ABV = 45

/** `1 litre liqueur, 36 %, 150 grams sugar in it`: the sugar of what is there says how sweet it is. */
export function sugarInside(around: RolesAround, bits: Open[]): void {
  const at = bits.findIndex(({ kind, role }) => kind === 'mass' && role === 'of_sugar')
  const [sugar, thing] = [bits[at], bits[bits[at]?.with ?? -1]]
  const poured = bits.filter(({ kind, role }) => kind === 'volume' && role !== 'of_water')
  const isSaid = bits.some(({ kind, value }) => kind === 'strength' && value <= MOST_ABV)
  const isOther = bits.some(({ kind }) => kind === 'plant' || kind === 'spirit' || kind === 'water')
  if (sugar === undefined || thing === undefined || poured.length !== 1 || !isSaid || isOther) return
  const end = Math.max(sugar.to, thing.to)
  if (!INSIDE.test(wordsOf(around, end, end + 2).join(' ')) && !isOfDrink(around, sugar)) return
  sugar.kind = 'sweetness'
  sugar.value = sugar.value / (poured[0]!.value / 1000)
  sugar.text = `${Math.round(sugar.value)} g/L`
  sugar.role = 'have'
  delete sugar.with
  thing.role = 'gone'
}
