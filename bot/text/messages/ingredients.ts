import type { PlantState } from '../../../core/botanical/botanical.ts'
import type { PlantIn } from '../../../core/jar/entry/entry.ts'
import type { IngredientsTold } from '../../../core/jar/state/batch-facts.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { Sweetening } from '../../../core/recipe/sweetening.ts'

export interface SpiritSaid {
  /** As it was typed, where that is known: it is said in the same unit. */
  readonly typed?: { readonly amount: string; readonly strength: string | null } | undefined
  readonly amount: Measured
  readonly by: 'volume' | 'mass'
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
  /** What its maker called it; null or left out: spirit. */
  readonly drink?: string | null | undefined
}

/** What went into a jar; its spirits as they were typed, where that is known. */
export type IngredientsSaid = Omit<IngredientsTold, 'spirits'> & { readonly spirits: readonly SpiritSaid[] }

export interface SweeteningSaid extends Sweetening {
  /** As it was typed, where all of it was: it is said in the same unit. */
  readonly typed?: string | undefined
}

export interface PlantSaid {
  readonly id: string
  readonly massG: Measured
  /** Its weight as it was typed, where it was: it is said in the same unit. */
  readonly typed?: string | undefined
  /** Fruit or pieces: counted, or as many as to buy for the zest; null where it is weighed. */
  readonly count: number | null
  /** What was counted: `each`, a piece such as `stick`, `teaspoon`; left out or null where that is not known. */
  readonly unit?: string | null | undefined
  /** Fresh or dried, where it was not said and has to be. */
  readonly state?: PlantState | undefined
  /** True where the zest of whole fruit is meant. */
  readonly ofZest: boolean
}

/** A plant that is not in the catalogue, in the maker's own words. */
export interface UnknownSaid {
  readonly id: null
  readonly name: string
  readonly massG: Measured
}

export interface BottlesSaid {
  readonly count: number
  readonly volumeMl: number
}

/** A plant by its id, or in its maker's words where it has none. */
export type PlantName = Pick<PlantIn, 'id' | 'name'>
