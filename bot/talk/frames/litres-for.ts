import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import type { Bit } from '../bits/bit.ts'

const USUAL_LITRES = 1

/** Litres of spirit in which plants of these weights are at their usual dose, to the nearest half; a litre where none is weighed. */
export function litresFor(bits: readonly Bit[]): number {
  const litres = bits.flatMap(({ kind, ids = [], with: place }) => {
    const [id] = ids
    const amount = place === undefined ? undefined : bits[place]
    if (kind !== 'plant' || id === undefined || amount?.kind !== 'mass') return []
    return [amount.value / botanicalById(id).dose.typicalGPerL]
  })
  const most = Math.max(0, ...litres)
  return most === 0 ? USUAL_LITRES : Math.max(0.5, Math.round(most * 2) / 2)
}
