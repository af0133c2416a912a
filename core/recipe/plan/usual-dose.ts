import type { Botanical, PieceKind } from '../../botanical/botanical.ts'
import { middle, pieceMass } from '../../botanical/catalogue/piece-mass.ts'

export interface UsualDose {
  /** g */
  readonly leastG: number
  readonly usualG: number
  readonly mostG: number
  /** How many pieces the usual amount is, not rounded; null of what is only weighed. */
  readonly pieces: { readonly count: number; readonly piece: PieceKind; readonly ofZest: boolean } | null
}

/**
 * The usual amount of a plant in so much spirit, and how far makers go below and above it: the doses of the catalogue, which are
 * common practice unless they name a source.
 *
 * @param spiritMl - above 0
 */
export function usualDose(botanical: Botanical, spiritMl: number): UsualDose {
  const { minGPerL, typicalGPerL, maxGPerL } = botanical.dose
  const [leastG, usualG, mostG] = [minGPerL, typicalGPerL, maxGPerL].map((gPerL) => (gPerL * spiritMl) / 1000)
  const one = pieceMass(botanical, null)
  const pieces =
    one === null
      ? null
      : { count: usualG! / middle([one.minG, one.maxG]), piece: one.piece ?? 'each', ofZest: one.piece === null }
  return { leastG: leastG!, usualG: usualG!, mostG: mostG!, pieces }
}
