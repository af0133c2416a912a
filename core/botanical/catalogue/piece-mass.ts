import type { Piece } from '../../quantity/quantities.ts'
import type { Botanical, PieceKind } from '../botanical.ts'
import type { Trust } from '../evidence/trust.ts'

export interface PieceMass {
  /** Null where the zest of a whole fruit is meant. */
  readonly piece: PieceKind | null
  readonly minG: number
  readonly maxG: number
  readonly trust: Trust
}

/** Words for a piece that the catalogue files under another one. */
const FILED_UNDER: Readonly<Record<Piece, readonly PieceKind[]>> = {
  stick: ['stick', 'pod', 'stalk'],
  pod: ['pod', 'star'],
  bean: ['bean', 'pod'],
  clove: ['clove'],
  leaf: ['leaf'],
  sprig: ['sprig', 'stalk'],
  slice: ['slice'],
  piece: ['each', 'thumb', 'finger'],
  bunch: ['bunch'],
  head: ['head'],
  pinch: ['pinch'],
}

/** Of what is known as a range. */
export const middle = ([least, most]: readonly [number, number]): number => (least + most) / 2

/** No piece of a plant: nothing is counted in them unless it is said. */
export const MEASURES: ReadonlySet<PieceKind> = new Set(['teaspoon', 'pinch', 'cup'])

/**
 * Mass of one piece as weighed in, g, or null where none is known: then it has to be weighed. Without a piece a count is
 * of fruit, whose zest is taken, or of what the plant is usually counted in (`5 cloves`, `2 vanilla`).
 */
export const pieceMass = (botanical: Botanical, piece: Piece | null): PieceMass | null => {
  const { zestGPerFruit: zest, pieces } = botanical
  if (piece === null || (piece === 'piece' && zest !== null)) {
    if (zest !== null) return { piece: null, minG: zest.strips[0], maxG: zest.strips[1], trust: zest.trust }
    return unsized(pieces) ?? pieces.find((each) => !MEASURES.has(each.piece)) ?? null
  }
  const kinds = FILED_UNDER[piece]
  return pieces.find((each) => kinds.includes(each.piece)) ?? (kinds.includes('each') ? unsized(pieces) : null)
}

/** Small or medium: where no size was said, either. */
const unsized = (pieces: Botanical['pieces']): PieceMass | null => {
  const sized = pieces.filter(({ piece }) => piece === 'small' || piece === 'medium')
  const [first] = sized
  if (first === undefined) return null
  return {
    piece: 'each',
    minG: Math.min(...sized.map(({ minG }) => minG)),
    maxG: Math.max(...sized.map(({ maxG }) => maxG)),
    trust: first.trust,
  }
}

/** A fruit gives at least such a share of its usual zest, a strip of it less. */
const WHOLE_PEEL_SHARE = 0.3

/** Whether so much is the zest of so many fruit, not of so many strips. */
export const isWholePeel = ({ zestGPerFruit: zest }: Botanical, count: number | null, massG: number): boolean =>
  zest !== null && (count === null || massG >= WHOLE_PEEL_SHARE * zest.strips[0] * count)
