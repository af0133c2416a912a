import type { Weakness } from '../../liquid/keeping.ts'
import type { CalendarDay } from '../../quantity/quantities.ts'
import type { OtherThing } from './other-than-plants.ts'

/** What a steep or a plan cannot do. `typed` is fit to be shown; ids are of the catalogue. */
export interface PlanProblems {
  /** It would ferment in the jar. */
  readonly steep_too_weak: Weakness & {
    /** What was tried and does; null where nobody tried. */
    readonly instead: {
      /** As much spirit of this whole strength; null where none that is sold does. */
      readonly spiritAbvPercent: number | null
      /** False where the amount of spirit is to be found. */
      readonly isSpiritGiven: boolean
      /** The spirit as it is, brought to no less than this first; null where that does not do. */
      readonly steepAtPercent: number | null
      readonly isDilutedFirst: boolean
      /** Some share of the plants that were weighed or counted. */
      readonly fewerPlants: boolean
      /** Less of the sugar that goes in with them. */
      readonly lessSugar: boolean
    } | null
  }
  /** What is wanted would ferment; with as much sugar it keeps from `keepsFromPercent` on. */
  readonly drink_ferments: {
    readonly abvPercent: number
    readonly sugarGPerL: number
    readonly keepsFromPercent: number
  }
  /** The drained plants would keep nearly all of the liquid; `enoughMl` of spirit would do. */
  readonly plants_drink_all: { readonly plantsG: number; readonly liquidMl: number; readonly enoughMl: number }
  /** A volume of a plant, or another unit that does not weigh it. */
  readonly plant_not_weighed: { readonly typed: string }
  /** Sugar, water or spirit among the plants; `value` is what its own option takes, empty where no amount was said. */
  readonly not_a_plant: {
    readonly typed: string
    readonly thing: OtherThing
    readonly value: string
    readonly line?: string | null
  }
  readonly plant_not_named: { readonly typed: string }
  /** A count of something of which nobody wrote down what one weighs. */
  readonly piece_not_weighed: {
    readonly typed: string
    readonly id: string
    readonly typicalGPerL: number
    /** The whole line with a weight in its place; left out where none was tried. */
    readonly line?: string
  }
  /** Without id: a plant that is not in the catalogue. */
  readonly plant_twice: { readonly typed: string; readonly id: string | null }
  readonly bottles_not_read: { readonly typed: string; readonly line?: string | null }
  /** No amount of spirit that can be bought fills the bottles. */
  readonly spirit_out_of_range: { readonly wantedMl: number }
  readonly ready_too_soon: { readonly readyBy: CalendarDay; readonly earliest: CalendarDay }
  readonly yes_or_no: { readonly typed: string }
  /** A day to be ready on, with a plant of which nothing is known. */
  readonly ready_by_unknown: { readonly name: string; readonly line?: string | null }
}

declare module '../../domain-error.ts' {
  interface Problems extends PlanProblems {}
}
