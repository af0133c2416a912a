import type { Botanical, PieceKind } from '../../botanical/botanical.ts'
import { CUSTOMARY, customaryPiece } from '../../botanical/catalogue/customary-pieces.ts'
import { type PieceMass, pieceMass } from '../../botanical/catalogue/piece-mass.ts'
import { DomainError } from '../../domain-error.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
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
  const counted = kind ?? (piece === 'piece' ? null : piece)
  const own = kind === null ? pieceMass(botanical, piece) : botanical.pieces.find((each) => each.piece === kind)
  const found = own ?? (counted === null ? null : customaryPiece(botanical, counted))
  if (found === null) {
    const { id, dose } = botanical
    throw new DomainError('bad_value', 'piece_not_weighed', { typed, id, typicalGPerL: dose.typicalGPerL })
  }
  const { value, plusMinus } = eachOf(botanical, found)
  return { value: count * value, plusMinus: count * plusMinus }
}

function eachOf({ zestGPerFruit }: Botanical, { piece, minG, maxG }: PieceMass): Measured {
  const each = between(minG, maxG)
  const zestShare = piece === null ? (zestGPerFruit?.plusMinusShare ?? 0) : 0
  return { value: each.value, plusMinus: Math.max(each.plusMinus, each.value * Math.max(LEAST_SHARE, zestShare)) }
}

/** A count is written in two digits, and in tenths: so far its mass may lie from that of as many pieces. */
const NEAR_SHARE = 0.05
const NEAR_PIECES = 0.05

/** A count's mass with the ± of its pieces; null where it is not what they weigh, so that somebody weighed it. */
export function massOfCounted(botanical: Botanical, count: number, massG: number): Measured | null {
  const offOf = ({ value }: Measured): number => Math.abs(massG / value - count)
  const customary = CUSTOMARY.map((piece) => customaryPiece(botanical, piece))
  const [nearest] = [pieceMass(botanical, null), ...botanical.pieces, ...customary]
    .flatMap((piece) => (piece === null ? [] : [eachOf(botanical, piece)]))
    .toSorted((one, other) => offOf(one) - offOf(other))
  if (nearest === undefined || offOf(nearest) > Math.max(NEAR_SHARE * count, NEAR_PIECES)) return null
  return { value: massG, plusMinus: (massG * nearest.plusMinus) / nearest.value }
}
