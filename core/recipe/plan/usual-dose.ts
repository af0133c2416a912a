import type { Botanical, PieceKind } from '../../botanical/botanical.ts'
import { MEASURES } from '../../botanical/catalogue/piece-mass.ts'

export interface UsualDose {
  /** g */
  readonly leastG: number
  readonly usualG: number
  readonly mostG: number
  /** How many pieces the usual amount is, not rounded; null of what is only weighed. */
  readonly pieces: { readonly count: number; readonly piece: PieceKind; readonly ofZest: boolean } | null
}

const middle = ([least, most]: readonly [number, number]): number => (least + most) / 2

/** What one of it weighs, of its peel where that is what goes in. */
function onePiece({ zestGPerFruit, pieces }: Botanical): readonly [piece: PieceKind, massG: number] | null {
  if (zestGPerFruit !== null) return ['each', middle(zestGPerFruit.strips)]
  const counted = pieces.find(({ piece }) => !MEASURES.has(piece))
  return counted === undefined ? null : [counted.piece, middle([counted.minG, counted.maxG])]
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
  const one = onePiece(botanical)
  const pieces =
    one === null ? null : { count: usualG! / one[1], piece: one[0], ofZest: botanical.zestGPerFruit !== null }
  return { leastG: leastG!, usualG: usualG!, mostG: mostG!, pieces }
}
