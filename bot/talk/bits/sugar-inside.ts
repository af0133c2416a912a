import { type Open, type RolesAround, wordsOf } from './attach.ts'

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
  if (!INSIDE.test(wordsOf(around, end, end + 2).join(' '))) return
  sugar.kind = 'sweetness'
  sugar.value = sugar.value / (poured[0]!.value / 1000)
  sugar.text = `${Math.round(sugar.value)} g/L`
  sugar.role = 'have'
  delete sugar.with
  thing.role = 'gone'
}
