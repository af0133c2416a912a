import type { Botanical, PieceKind } from '../../botanical/botanical.ts'
import { pieceMass } from '../../botanical/piece-mass.ts'
import { DomainError } from '../../domain-error.ts'
import type { Measured } from '../../quantity/measured.ts'
import type { Piece } from '../../quantity/quantities.ts'
import { between } from './between.ts'

/** Fruit and sticks vary at least so much, as a share. Estimated. */
const LEAST_SHARE = 0.2

interface Pieces {
  readonly count: number
  readonly piece: Piece | null
  /** A piece that `parseCount` does not know: a thumb, a head, a spoonful. */
  readonly kind: PieceKind | null
}

/**
 * Grams of a counted plant: the zest of so many fruit, cut in strips with a peeler, or the weight of so many pieces.
 * Throws `piece_not_weighed` where nobody has written down what one weighs.
 */
export function weighPieces(botanical: Botanical, { count, piece, kind }: Pieces, typed: string): Measured {
  const found =
    kind === null ? pieceMass(botanical, piece) : (botanical.pieces.find((each) => each.piece === kind) ?? null)
  if (found === null) {
    const { id, dose } = botanical
    throw new DomainError('bad_value', 'piece_not_weighed', { typed, id, typicalGPerL: dose.typicalGPerL })
  }
  const each = between(found.minG, found.maxG)
  const zestShare = found.piece === null ? (botanical.zestGPerFruit?.plusMinusShare ?? 0) : 0
  const plusMinusG = Math.max(each.plusMinus, each.value * Math.max(LEAST_SHARE, zestShare))
  return { value: count * each.value, plusMinus: count * plusMinusG }
}
