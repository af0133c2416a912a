import type { Botanical, PieceKind } from '../botanical/botanical.ts'
import { isWholePeel, MEASURES, middle } from '../botanical/catalogue/piece-mass.ts'
import type { MaterialId } from '../quantity/materials.ts'
import type { BatchPlant } from '../recipe/batch.ts'
import { botanicalOf } from '../recipe/plan/batch-wish.ts'

/** A plant that something takes: counted where a cook counts it, else weighed. */
export interface PlantNeed {
  /** Of the catalogue; null where the maker answers for it. */
  readonly id: string | null
  readonly name: string
  readonly isDried: boolean
  readonly massG: number
  /** Whole fruit, or pieces; null where it is weighed. */
  readonly count: number | null
  /** What is counted; null where it is weighed. */
  readonly unit: PieceKind | null
  /** True of whole fruit that are bought for their peel. */
  readonly ofZest: boolean
}

export interface SpiritNeed {
  /** At 20 °C. */
  readonly volumeMl: number
  readonly abvPercent: number
  readonly sugarGPerL: number
  /** `gin`, where its maker called it that; null: spirit, or what is sweet. */
  readonly drink: string | null
}

/** What sweetens, or stands for the water. */
export interface SweetenerNeed {
  readonly material: MaterialId
  readonly massG: number
}

/** Bottles or jars of one size. */
export interface VesselNeed {
  readonly count: number
  readonly volumeMl: number
}

/** All that one batch still takes, exactly. */
export interface Needs {
  readonly plants: readonly PlantNeed[]
  readonly spirits: readonly SpiritNeed[]
  readonly sweeteners: readonly SweetenerNeed[]
  readonly bottles: readonly VesselNeed[]
  readonly jars: readonly VesselNeed[]
  /** Still to be strained, which takes a cloth, or filtered, which takes paper. */
  readonly isToStrain: boolean
  readonly isToFilter: boolean
}

export const NOTHING_NEEDED: Needs = {
  plants: [],
  spirits: [],
  sweeteners: [],
  bottles: [],
  jars: [],
  isToStrain: false,
  isToFilter: false,
}

/** Of one fruit, of which nobody says how large. */
const SIZES: ReadonlySet<PieceKind> = new Set(['small', 'medium'])

/** So far a piece may be from its usual mass. */
const NEAR_FACTOR = 3

/** What was counted: the piece whose usual mass is nearest; null of what is not bought by the piece. */
function pieceCounted({ pieces }: Botanical, count: number, massG: number): PieceKind | null {
  const offBy = ({ minG, maxG }: Botanical['pieces'][number]): number =>
    Math.abs(Math.log((count * middle([minG, maxG])) / massG))
  const [nearest] = pieces.toSorted((one, other) => offBy(one) - offBy(other))
  // Nobody buys by the spoonful or the pinch, and a slice is no whole root.
  if (nearest === undefined || MEASURES.has(nearest.piece) || offBy(nearest) > Math.log(NEAR_FACTOR)) return null
  return SIZES.has(nearest.piece) ? 'each' : nearest.piece
}

/** A plant of a batch as it is bought: whole fruit where only their peel goes in, however that was said. */
export function plantNeed(
  plant: Pick<BatchPlant<unknown>, 'id' | 'name' | 'isDried' | 'count'> & { readonly massG: number },
): PlantNeed {
  const { id, name, isDried, massG, count } = plant
  const weighed = { id, name, isDried, massG, count: null, unit: null, ofZest: false }
  if (id === null) return weighed
  const botanical = botanicalOf({ id, isDried })
  const { zestGPerFruit } = botanical
  if (zestGPerFruit !== null) {
    const fruit = count === null || !isWholePeel(botanical, count, massG) ? massG / middle(zestGPerFruit.strips) : count
    return { ...weighed, count: fruit, unit: 'each', ofZest: true }
  }
  const unit = count === null ? null : pieceCounted(botanical, count, massG)
  return unit === null ? weighed : { ...weighed, count, unit }
}
