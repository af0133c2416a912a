import type { PieceKind } from '../../../core/botanical/botanical.ts'
import type { OverCeiling } from '../../../core/botanical/limits/ceilings.ts'

/** What one piece weighs of a plant that was counted. */
export interface PieceWeight {
  readonly id: string
  readonly piece: PieceKind
  readonly minG: number
  readonly maxG: number
}

/** More of a plant than its limit. Lines are whole lines that were tried. */
export interface LimitProblems {
  /** `line`: the same with as much of it as is fine; null where there is none. */
  plan_over_ceiling: OverCeiling & { readonly pieces: readonly PieceWeight[]; readonly line: string | null }
  /**
   * Together with what is in a jar. `isPlants`: of plants that go in, not of less spirit than was said; `line`: less of them,
   * null where no more of them fits; `already`: that it is so all the same.
   */
  jar_passes_ceiling: OverCeiling & {
    readonly jar: string
    readonly pieces: readonly PieceWeight[]
    readonly isPlants: boolean
    readonly line: string | null
    readonly already: string
  }
}
