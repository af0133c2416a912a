import type { Botanical, PieceKind } from '../botanical.ts'
import type { Trust } from '../evidence/trust.ts'
import type { PieceMass } from './piece-mass.ts'

/** Strips that a fruit is peeled into: 8 to 12. Common practice, no source. */
const STRIPS = { least: 8, most: 12 } as const

/** A pinch between two fingers of anything dry, g: a 16th of a teaspoon. Common practice, no source. */
const PINCH = [0.1, 0.4, 'common_practice'] as const

/** What is dry and fine enough for two fingers. */
const PINCHED: ReadonlySet<Botanical['kind']> = new Set(['spice', 'herb', 'flower', 'bitter', 'root'])

/** A level teaspoon of grated peel, g: 2 g of lemon and of orange in USDA's table (rows 09156 and 09216), from memory. */
const ZEST_BY_THE_TEASPOON = [1.5, 2.5, 'memory'] as const

type Row = { readonly [Key in PieceKind]?: readonly [number, number, Trust] }

/**
 * Pieces that the catalogue's own rows do not count in, g. Slices of ginger, sprigs of parsley, dill and coriander and leaves of mint
 * are household measures of USDA's table (rows 11216, 11297, 02045, 11165, 02064 and 02065), from memory; what else stands here is
 * estimated after a plant of like growth.
 */
const OTHERWISE: Readonly<Record<string, Row>> = {
  ginger: { slice: [1.5, 3, 'memory'] },
  turmeric: { slice: [0.5, 1.5, 'estimated'] },
  basil: { sprig: [1, 3, 'estimated'] },
  peppermint: { leaf: [0.03, 0.2, 'memory'] },
  spearmint: { leaf: [0.03, 0.2, 'memory'] },
  lemon_balm: { leaf: [0.05, 0.3, 'estimated'] },
  sage: { sprig: [1, 3, 'estimated'] },
  lemon_verbena: { sprig: [1, 3, 'estimated'] },
  savory: { sprig: [0.5, 1.5, 'estimated'] },
  hyssop: { sprig: [0.5, 1.5, 'estimated'] },
  dill: { sprig: [0.2, 0.5, 'memory'] },
  fennel_fronds: { sprig: [0.5, 2, 'estimated'] },
  parsley: { sprig: [1, 1, 'memory'] },
  coriander_leaf: { sprig: [2, 2.5, 'memory'] },
  chervil: { sprig: [0.5, 1.5, 'estimated'] },
  bay_leaf_fresh: { sprig: [3, 6, 'estimated'] },
}

/** A strip of peel, a pinch of what is dry, a slice or a sprig that its own row does not count in; null where nobody knows. */
export function customaryPiece({ id, kind, form, zestGPerFruit }: Botanical, piece: PieceKind): PieceMass | null {
  if (piece === 'strip' && zestGPerFruit !== null) {
    const [least, most] = zestGPerFruit.strips
    return { piece, minG: least / STRIPS.most, maxG: most / STRIPS.least, trust: 'common_practice' }
  }
  if (piece === 'teaspoon' && zestGPerFruit !== null) {
    const [minG, maxG, trust] = ZEST_BY_THE_TEASPOON
    return { piece, minG, maxG, trust }
  }
  const isFresh = form.state === 'fresh'
  const row = isFresh ? OTHERWISE[id]?.[piece] : piece === 'pinch' && PINCHED.has(kind) ? PINCH : undefined
  return row === undefined ? null : { piece, minG: row[0], maxG: row[1], trust: row[2] }
}

export const CUSTOMARY: readonly PieceKind[] = ['strip', 'slice', 'sprig', 'leaf', 'pinch', 'teaspoon']
