import type { Botanical } from '../../botanical/botanical.ts'
import type { MaterialId } from '../../quantity/materials.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import type { CalendarDay } from '../../quantity/quantities.ts'
import type { Origin, PlantWords, SteepSpan } from '../batch.ts'
import type { NamedPortion } from '../portion.ts'
import type { Sweetening } from '../sweetening.ts'
import type { Bottles } from './parse-bottles.ts'
import type { NamedTargets } from './reach-targets.ts'
import type { KeptDays } from './schedule.ts'
import type { UnknownPlant } from './unknown-plant.ts'

export interface PlannedPlant {
  readonly botanical: Botanical
  /** Null: the typical dose for the spirit. */
  readonly massG: Measured | null
  readonly count: number | null
  /** How its maker spoke of it; null, or left out, where nobody typed it. */
  readonly words?: PlantWords | null | undefined
}

export interface PlanWish {
  readonly plants: readonly PlannedPlant[]
  /** Plants that are not in the catalogue, for which the maker answers. */
  readonly unknown: readonly UnknownPlant[]
  /** How long the maker steeps the batch; null where that was not said. */
  readonly steepFor: SteepSpan | null
  /** What is at hand; null to find how much fills the bottles. */
  readonly spirits: readonly NamedPortion[] | null
  /** Of the spirit to find. */
  readonly spiritAbvPercent: Measured
  readonly steepAtPercent: number | null
  /** What goes in with the plants. */
  readonly sweetenings: readonly Sweetening[]
  /** What it is sweetened with after straining; null, or left out: white sugar. */
  readonly sweetener?: MaterialId | null | undefined
  /** What goes in for the water then; null, or left out: water. */
  readonly filler?: MaterialId | null | undefined
  readonly named: NamedTargets
  readonly bottles: readonly Pick<Bottles, 'count' | 'volumeMl'>[]
  /** False, or left out, where nobody said which. */
  readonly areBottlesNamed?: boolean | undefined
  readonly start: CalendarDay
  /** Of no effect where a plant is unknown. */
  readonly readyBy: CalendarDay | null
  /** Everything goes in at the start; left out: the shorter ones later. */
  readonly areAllIn?: boolean | undefined
  /** It stands in the jar already: then it is planned whatever becomes of it. */
  readonly isPoured?: boolean | undefined
  /** The days of a batch that is made again; left out: the plants' own. */
  readonly kept?: KeptDays | undefined
  /** Whose batch it was before; null, or left out, where it is the maker's own. */
  readonly origin?: Origin | null | undefined
}
