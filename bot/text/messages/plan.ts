import type { FoodNote } from '../../../core/botanical/food.ts'
import type { MaterialId } from '../../../core/quantity/materials.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import type { Sweetening } from '../../../core/recipe/sweetening.ts'
import type { BottlesSaid, LaterSaid, PlantSaid, SpiritSaid, UnknownSaid } from './ingredients.ts'
import type { Plain } from './plain.ts'

export interface PlanSaid extends BatchSaid {
  /** Plants that go in after the first day. */
  readonly later: readonly LaterSaid[]
  readonly strainFrom: CalendarDay
  readonly strainBy: CalendarDay
  readonly isHours: boolean
  readonly ready: CalendarDay
}

/** What to get and what it makes. */
export interface BatchSaid {
  readonly spirits: readonly SpiritSaid[]
  readonly plants: readonly (PlantSaid | UnknownSaid)[]
  /** All of them, with the plants and in the syrup. */
  readonly sweetenings: readonly Sweetening[]
  readonly volumeMl: Measured
  readonly bottles: readonly BottlesSaid[]
}

export interface UnknownPlanSaid extends BatchSaid, PlanNamed {
  readonly strainOn: CalendarDay | null
}

export interface PlanNamed {
  readonly names: readonly string[]
}

export interface PlanInJar {
  readonly spirits: readonly SpiritSaid[]
  readonly plants: readonly (PlantSaid | UnknownSaid)[]
  readonly sweetenings: readonly Sweetening[]
}

export interface PlanStrained {
  readonly infusionMl: Measured
  readonly infusionAbvPercent: Measured
  readonly keptBackMl: Measured
}

export interface PlanSyrup {
  readonly sweetener: MaterialId
  readonly sugarG: Measured
  readonly waterMl: Measured
  /** Null where no syrup can be made of them first. */
  readonly syrupG: Measured | null
}

export interface PlanDosed {
  readonly id: string
  readonly gPerL: number
  readonly limitGPerL: number
}

export interface UsualSpirit {
  readonly id: string
  readonly lowPercent: number
  readonly highPercent: number
  /** Or too weak. */
  readonly isTooStrong: boolean
}

export interface OutOfSeason {
  /** From 1. */
  readonly month: number
  readonly plants: readonly { readonly id: string; readonly months: readonly number[] }[]
}

/** What the plants of a batch made again have to do with how much comes of it. */
export interface PlantLimit {
  /** The one that there is least of; null where it is none. */
  readonly limitId: string | null
  /** Whether it was said how much there is of one. */
  readonly isPlantSaid: boolean
}

/** Bottles that what there is does not fill. */
export interface PlanEmpty extends PlantLimit {
  readonly empty: number
  readonly isSpiritSaid: boolean
  /** Outside `spirit:`. */
  readonly isStrengthSaid: boolean
}

/** The strained liquid as expected, and what is wished for. */
export interface PlanAdjust {
  readonly infusionMl: number
  readonly abvPercent: number
  readonly sugarGPerL: number
  readonly toAbvPercent: number
  readonly toSugarGPerL: number
}

export interface PlanMessages {
  headlines: {
    plan: PlanSaid
    plan_unknown: UnknownPlanSaid
  }
  rows: Plain<
    | 'plan_in_jar'
    | 'plan_water_first'
    | 'plan_jar'
    | 'plan_steeping'
    | 'plan_add_later'
    | 'plan_taste'
    | 'plan_strain'
    | 'plan_strained'
    | 'plan_sweeten'
    | 'plan_syrup'
    | 'plan_stir_in'
    | 'plan_rest'
    | 'plan_ready'
    | 'plan_bottles'
  >
  cells: {
    plan_in_jar: PlanInJar
    plan_water_first: { readonly waterMl: Measured; readonly abvPercent: number }
    plan_jar: { readonly jarMl: number }
    plan_steeping: { readonly abvPercent: Measured; readonly plantWaterG: Measured }
    plan_add_later: { readonly later: readonly { readonly id: string; readonly day: CalendarDay }[] }
    plan_day: { readonly day: CalendarDay }
    plan_days: { readonly from: CalendarDay; readonly to: CalendarDay }
    plan_by: { readonly day: CalendarDay }
    plan_strained: PlanStrained
    plan_syrup: PlanSyrup
    plan_rest: { readonly restDays: number }
    plan_ready: {
      readonly ready: CalendarDay
      readonly bestBefore: CalendarDay | null
      /** It may not keep. */
      readonly isForWeeks: boolean
    }
    plan_bottles: { readonly bottles: readonly BottlesSaid[]; readonly leftoverMl: Measured }
  }
  sure: {
    plan_expected: { readonly abvPercent: Measured; readonly volumeMl: Measured; readonly isSyrup: boolean }
  }
  notes: Plain<
    | 'plan_nearest'
    | 'plan_days_known'
    | 'plan_zest'
    | 'plan_pieces'
    | 'plan_sugar_alone'
    | 'plan_pith'
    | 'plan_crack'
    | 'plan_sugar_slow'
    | 'plan_pectin'
    | 'plan_citrus_cloud'
    | 'plan_anethole_cloud'
    | 'plan_green'
    | 'plan_water'
    | 'plan_law'
    | 'plan_unknown_days'
  > & {
    plan_assumed: {
      readonly abvPercent: number | null
      readonly sugarGPerL: number | null
      readonly bottleMl: number | null
    }
    plan_form_taken: { readonly forms: readonly { readonly id: string; readonly state: string }[] }
    plan_corrected: { readonly ids: readonly string[] }
    plan_typical: { readonly ids: readonly string[] }
    plan_more_than_usual: PlanDosed
    plan_less_than_usual: PlanDosed
    plan_far_off: { readonly plant: PlantSaid; readonly pouredMl: number; readonly usualG: number }
    plan_above_wise: PlanDosed
    plan_caffeine: {
      readonly mg: number
      readonly mostMg: number
      readonly glassMl: number
    }
    plan_capped: { readonly ids: readonly string[] }
    plan_spirit_usual: UsualSpirit
    plan_hurried_rest: { readonly restDays: number }
    plan_hurried_steep: { readonly restDays: number }
    plan_latest_start: { readonly day: CalendarDay }
    plan_out_of_season: OutOfSeason
    plan_empty: PlanEmpty
    plan_adjust: PlanAdjust
    plan_measure: { readonly isSyrup: boolean }
    plan_no_syrup: { readonly dissolvesG: number }
    plan_care: { readonly bulky: boolean }
    plan_fruit_sugar: { readonly sugarG: Measured }
    plan_spent: { readonly keptBackMl: Measured; readonly rinse: 'syrup' | 'water' | null }
    plan_estimates: { readonly memoryIds: readonly string[] }
    plan_unknown_yours: PlanNamed
    plan_unknown_range: {
      readonly waterPercent: number
      readonly keptMinMlPerG: number
      readonly keptMaxMlPerG: number
    }
  }
  cautions: {
    plan_unknown: PlanNamed & { readonly notes: readonly FoodNote[] }
  }
}
