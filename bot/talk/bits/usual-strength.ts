import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import type { Bit } from './bit.ts'

/** What is mostly used where nothing is said, % vol: peels give their oil to strong spirit. Common practice, no source. */
export function usualStrength(bits: readonly Bit[]): string {
  const named = bits.find(({ spirit }) => spirit !== undefined)?.spirit
  const ofDrink = named === undefined ? undefined : /\d+%/.exec(named)?.[0]
  if (ofDrink !== undefined) return ofDrink
  const ids = bits.flatMap(({ kind, ids: all = [] }) => (kind === 'plant' ? all.slice(0, 1) : []))
  return ids.some((id) => botanicalById(id).kind === 'citrus') ? '95%' : '40%'
}
