import { OUNCE_G, US_FLUID_OUNCE_ML } from '../../../core/quantity/customary.ts'
import { type Open, type RolesAround, wordsOf } from './attach.ts'

const OUNCES = /^([\d.,/ ]*\d) ?(?:oz|ounces?)$/i

/** `16 oz white rum`, `26 ounces of gin`: a spirit is poured, so that its ounces are fluid. */
export function ouncesPoured(bits: Open[]): void {
  for (const bit of bits) {
    const count = bit.kind === 'mass' && bit.role === 'of_spirit' ? OUNCES.exec(bit.text)?.[1] : undefined
    if (count === undefined) continue
    bit.kind = 'volume'
    bit.text = `${count} fl oz`
    bit.value = (bit.value / OUNCE_G) * US_FLUID_OUNCE_ML
  }
}

/** Sizes that bottles of spirit are told by without their unit, litres. */
const SOLD_L: ReadonlySet<number> = new Set([1.75, 1.14, 1.5, 0.75, 0.7, 0.5])

/** `A 1.75 of vodka`, `0.7 of gin`: the size of the bottle, in litres. */
export function litresSold(around: RolesAround, bits: Open[]): void {
  bits.forEach((bit, at) => {
    const isOf = wordsOf(around, bit.to, bit.to + 1)[0] === 'of' && bits[at + 1]?.from === bit.to + 1
    if (bit.kind !== 'bare' || !SOLD_L.has(bit.value) || !isOf || bits[at + 1]?.kind !== 'spirit') return
    bit.kind = 'volume'
    bit.value *= 1000
    bit.text = `${bit.text} l`
  })
}
