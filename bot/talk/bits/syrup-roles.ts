import { isJarName, isLitres, type Open, type RolesAround } from './attach.ts'

/** From here on a number that stands alone is one of grams or ml. */
const LEAST = 100

/** Cups and the like, of which a bare number behind is so many more: `two cups of sugar and five of water`. */
const KITCHEN_UNIT = /\b(?:cups?|tazz[ae]|pints?|litres?|liters?|l|litri|litro)$/i

/** Where it is told that the syrup is in, what is weighed is its sugar and what is poured its water: `syrup's in, 450 g and 1.3 l`. */
export function syrupParts(around: RolesAround, bits: Open[]): void {
  for (const bit of bits)
    if (bit.kind === 'bare' && bit.role === 'of_water' && isLitres(bit.text))
      Object.assign(bit, { kind: 'volume', text: `${bit.text} l`, value: 1000 * bit.value })
  bits.forEach((bit, at) => {
    const before = bits
      .slice(0, at)
      .findLast(({ kind, role }) => kind === 'volume' && (role === 'of_sugar' || role === 'of_water'))
    const thing = bits[at + 1]
    if (bit.kind !== 'bare' || bit.with !== undefined || before === undefined || thing === undefined) return
    const unit = KITCHEN_UNIT.exec(before.text)?.[0]
    const isOf = around.typed.tokens.slice(bit.to, thing.from).every(({ text }) => /^(?:of|di|d)$/.test(text))
    if (unit === undefined || !isOf || (thing.kind !== 'water' && thing.kind !== 'sugar')) return
    Object.assign(bit, {
      kind: 'volume',
      text: `${bit.text} ${unit}`,
      role: thing.kind === 'water' ? 'of_water' : 'of_sugar',
    })
    bit.with = at + 1
    thing.with = at
  })
  if (!around.spans.some(({ concept }) => concept === 'sweetened')) return
  if (bits.some(({ kind, role }) => kind === 'spirit' || (kind === 'strength' && role !== 'want'))) return
  const isFree = ({ role, with: place }: Open): boolean => {
    const thing = place === undefined ? undefined : bits[place]
    return role === null || (thing?.kind === 'plant' && role === 'of_plant' && isJarName(around, thing))
  }
  const has = (role: Open['role']): boolean => bits.some((bit) => bit.role === role)
  const give = (bit: Open | undefined, role: 'of_sugar' | 'of_water', unit: string): void => {
    if (bit === undefined || has(role)) return
    const thing = bit.with === undefined ? undefined : bits[bit.with]
    if (thing !== undefined) delete thing.with
    delete bit.with
    if (bit.kind === 'bare') bit.text = `${bit.text} ${unit}`
    if (bit.kind === 'bare') bit.kind = unit === 'g' ? 'mass' : 'volume'
    bit.role = role
  }
  give(
    bits.find((bit) => bit.kind === 'mass' && isFree(bit)),
    'of_sugar',
    'g',
  )
  give(
    bits.find((bit) => bit.kind === 'volume' && isFree(bit)),
    'of_water',
    'ml',
  )
  // `450 and 1300 ml`: where one of the two is told, the other is the number that stands beside it.
  const bare = bits.filter((bit) => bit.kind === 'bare' && isFree(bit) && bit.value >= LEAST)
  if (bare.length !== 1) return
  if (has('of_water')) give(bare[0], 'of_sugar', 'g')
  else if (has('of_sugar')) give(bare[0], 'of_water', 'ml')
}
