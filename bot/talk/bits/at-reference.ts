import { type Open, type RolesAround, wordsOf } from './attach.ts'

/** Strengths are told at this temperature, °C: OIML R 22:1975, and every label. */
const REFERENCE_C = 20
const REFERENCE_F = 68

/** `Reads 79.5 % vol at 20 °C`: the temperature at which every strength is told changes nothing. */
export function atReference(around: RolesAround, bits: Open[]): void {
  bits.forEach((bit, at) => {
    const before = bits[at - 1]
    if (bit.kind !== 'temperature' || (before?.kind !== 'strength' && before?.kind !== 'gravity')) return
    const isFahrenheit = /f(?:ahrenheit)?$/iu.test(bit.text)
    if (Number.parseFloat(bit.text) !== (isFahrenheit ? REFERENCE_F : REFERENCE_C)) return
    if (wordsOf(around, before.to, bit.from).every((word) => /^(?:vol|abv|by|volume|[(,]|at|a|@)$/.test(word)))
      bit.role = 'gone'
  })
}
