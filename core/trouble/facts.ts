import type { Botanical } from '../botanical/botanical.ts'
import type { FreezerState } from '../liquid/freezer.ts'
import type { Keeping } from '../liquid/keeping.ts'
import type { SugarState } from '../liquid/solubility.ts'
import type { Measured } from '../quantity/measured/measured.ts'
import type { Sign } from './signs.ts'

/** A plant in it. */
export interface PlantThere {
  /** Null where it is not in the catalogue. */
  readonly botanical: Botanical | null
  readonly name: string
  /** In a litre of the spirit; null where no amount is known. */
  readonly gPerL: number | null
  /** Grams of one piece against the most that is usual, where pieces were counted; null where they were not. */
  readonly pieceShare: number | null
  /** Days in the spirit, up to now where it is still in; null where nobody knows. */
  readonly days: number | null
}

/** All that is known of what went wrong with; null wherever it is not known. */
export interface TroubleFacts {
  readonly abvPercent: Measured | null
  readonly sugarGPerL: Measured | null
  /** While the plants were in, their water counted, % vol. */
  readonly steepPercent: number | null
  /** The weakest it has been since the plants went in, % vol. */
  readonly weakestPercent: number | null
  /** Whether yeast can live in it at its weakest. */
  readonly keeping: Keeping | null
  /** At its weakest. */
  readonly delleUnits: number | null
  readonly sugarState: SugarState | null
  /** The sweetest that keeps its sugar dissolved without doubt at its strength, g/L. */
  readonly largestGPerL: number | null
  readonly inFreezer: { readonly state: FreezerState; readonly freezesAtC: number; readonly freezerC: number } | null
  readonly plants: readonly PlantThere[] | null
  /** Days on the plants, up to now where they are still in. */
  readonly steepedDays: number | null
  readonly isSteeping: boolean | null
  /** Days since the last syrup. */
  readonly restedDays: number | null
  readonly ageDays: number | null
  /** The share of what was expected that is missing, where it was measured. */
  readonly missingShare: number | null
  /** What was planned, % vol. */
  readonly plannedPercent: number | null
  /** Sugar of the plants themselves, g/L of it now. */
  readonly plantSugarGPerL: number | null
  /** Whether its maker put in anything that sweetens, at any time; the plants' own sugar does not count. */
  readonly isSweetened: boolean | null
  /** Whether a syrup, or sugar and water after straining, went in. */
  readonly hasSyrup: boolean | null
  /** Whether it is sweetened with something else than white sugar. */
  readonly isOddlySweetened: boolean | null
  readonly isOverCeiling: boolean | null
  readonly signs: Readonly<Partial<Record<Sign, boolean>>>
}

/** Of something nobody has told anything of. */
export const NOTHING_KNOWN: TroubleFacts = {
  abvPercent: null,
  sugarGPerL: null,
  steepPercent: null,
  weakestPercent: null,
  keeping: null,
  delleUnits: null,
  sugarState: null,
  largestGPerL: null,
  inFreezer: null,
  plants: null,
  steepedDays: null,
  isSteeping: null,
  restedDays: null,
  ageDays: null,
  missingShare: null,
  plannedPercent: null,
  plantSugarGPerL: null,
  isSweetened: null,
  hasSyrup: null,
  isOddlySweetened: null,
  isOverCeiling: null,
  signs: {},
}
