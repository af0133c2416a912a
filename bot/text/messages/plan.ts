import type { FoodNote } from '../../../core/botanical/food.ts'
import type { MaterialId } from '../../../core/quantity/materials.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import type { Call } from '../../calls/call.ts'
import type { FrozenSaid } from './calculate.ts'
import type { BottlesSaid, PlantSaid, SpiritSaid, SweeteningSaid, UnknownSaid } from './ingredients.ts'
import type { Plain } from './plain.ts'

/** What to get and what it makes. */
export interface BatchSaid {
  readonly spirits: readonly SpiritSaid[]
  readonly plants: readonly (PlantSaid | UnknownSaid)[]
  /** All of them, with the plants and in the syrup. */
  readonly sweetenings: readonly SweeteningSaid[]
}

/** What to get, parted by what is there already. */
export interface BatchAtHand {
  /** All of it is there. */
  readonly had: BatchSaid
  /** Some of it is there, as it was typed. */
  readonly partly: readonly string[]
  /** Nothing of it is there. */
  readonly buy: BatchSaid
  /** What is still lacking of what is there in part. */
  readonly rest: BatchSaid
}

/** What comes of it, and when. */
export interface PlanMakes {
  readonly volumeMl: Measured
  readonly abvPercent: Measured
  readonly bottles: readonly BottlesSaid[]
  readonly leftoverMl: Measured
  readonly start: CalendarDay
  /** Null where it is not known. */
  readonly ready: CalendarDay | null
}

/** What is done on the first day. */
export interface PlanPutIn {
  readonly spirits: readonly SpiritSaid[]
  /** Those that go in at once. */
  readonly plants: readonly (PlantSaid | UnknownSaid)[]
  readonly sweetenings: readonly SweeteningSaid[]
  /** That dilutes the spirit first; null for none. */
  readonly waterMl: Measured | null
  readonly jarMl: number
  /** It is strained on the day it is begun. */
  readonly isHours: boolean
}

/** Tasting and straining, on the day that stands beside it. */
export interface PlanStrain {
  readonly infusionMl: Measured
  /** Null where it is strained on that day. */
  readonly from: CalendarDay | null
  readonly to: CalendarDay | null
  readonly isTasted: boolean
  readonly isHours: boolean
}

export interface PlanNamed {
  readonly names: readonly string[]
}

export interface PlanStrained {
  readonly infusionMl: Measured
  readonly infusionAbvPercent: Measured
  readonly keptBackMl: Measured
}

export interface PlanSyrup {
  readonly sweetener: MaterialId
  /** What stands for the water; null for water. */
  readonly filler: MaterialId | null
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
  readonly ids: readonly string[]
  readonly lowPercent: number
  readonly highPercent: number
  /** What dilutes it first; null where it is too weak. */
  readonly diluted: Call | null
}

export interface OutOfSeason {
  readonly plants: readonly { readonly id: string; readonly months: readonly number[] }[]
  readonly isSouth: boolean
}

/** What the plants of a batch made again have to do with how much comes of it. */
export interface PlantLimit {
  /** The one that there is least of; null where it is none. */
  readonly limitId: string | null
  /** Whether it was said how much there is of one. */
  readonly isPlantSaid: boolean
}

/** Bottles that what there is does not fill. */
export interface PlanEmpty extends Pick<PlantLimit, 'limitId'> {
  /** Bottles that stay empty, and those that are filled. */
  readonly empty: number
  readonly filled: number
}

export interface PlanMessages {
  headlines: {
    plan: BatchSaid & { readonly atHand: BatchAtHand | null }
    /** Before what is bought: it does not fill the bottles that were wished for. */
    plan_short: PlanEmpty
    plan_makes: PlanMakes
  }
  rows: Plain<
    | 'plan_jar'
    | 'plan_steeping'
    | 'plan_add_later'
    | 'plan_taste'
    | 'plan_strain'
    | 'plan_strained'
    | 'plan_syrup'
    | 'plan_stir_in'
    | 'plan_rest'
    | 'plan_ready'
    | 'plan_same_day'
    | 'plan_when_done'
  > & { plan_on: { readonly day: CalendarDay } }
  cells: {
    plan_put_in: PlanPutIn
    plan_add: { readonly ids: readonly string[] }
    plan_taste_strain: PlanStrain
    plan_stir_in: PlanSyrup & { readonly isCloudy: boolean }
    plan_ready_so: { readonly freezer: FrozenSaid; readonly isForWeeks: boolean }
    plan_jar: { readonly jarMl: number }
    plan_steeping: { readonly abvPercent: Measured; readonly plantWaterG: Measured }
    plan_add_later: { readonly later: readonly { readonly id: string; readonly day: CalendarDay }[] }
    plan_day: { readonly day: CalendarDay }
    plan_days: { readonly from: CalendarDay; readonly to: CalendarDay }
    plan_strained: PlanStrained
    plan_syrup: PlanSyrup
    plan_rest: { readonly restDays: number }
    plan_ready: {
      /** Null where nobody has said. */
      readonly bestUntil: CalendarDay | null
      /** It may not keep. */
      readonly isForWeeks: boolean
    }
  }
  sure: {
    plan_expected: { readonly abvPercent: Measured; readonly volumeMl: Measured }
  }
  notes: Plain<
    | 'plan_zest'
    | 'plan_pieces'
    | 'plan_crack'
    | 'plan_adjust'
    | 'plan_measure'
    | 'plan_sugar_slow'
    | 'plan_pectin'
    | 'plan_citrus_cloud'
    | 'plan_anethole_cloud'
    | 'plan_green'
    | 'plan_water'
    | 'plan_law'
  > & {
    /** A recipe's own water and sugar, and which of them a wished strength or sweetness stands for. */
    plan_own_syrup: {
      readonly water: 'own' | 'wished'
      readonly sugar: 'own' | 'wished' | 'open'
      readonly sweetener: MaterialId
      readonly filler: MaterialId | null
      readonly abvPercent: Measured
      /** Null where another note tells it. */
      readonly sugarGPerL: number | null
    }
    plan_assumed: {
      /** What it comes to; null where a strength was wished for. */
      readonly abvPercent: Measured | null
      readonly sugarGPerL: number | null
      /** What of the usual this infusion does not reach. */
      readonly nearest: 'strength' | 'sweetness' | 'dryness' | null
    }
    /** What says it, of a plan; null of a jar that is begun. */
    plan_unknown_days: { readonly line: Call | null }
    plan_form_taken: { readonly forms: readonly { readonly id: string; readonly state: string }[] }
    plan_corrected: { readonly ids: readonly string[] }
    /** More of it, as water went in first, than as much drink needs. */
    plan_diluted_first: { readonly taken: PlantSaid; readonly enough: PlantSaid }
    /** What is usual instead; 0 where hours are enough. */
    /** Usual days of what goes in with the rest all the same. */
    plan_all_in: { readonly ids: readonly string[]; readonly fromDays: number; readonly byDays: number }
    plan_days_said: { readonly fromDays: number; readonly byDays: number }
    plan_typical: { readonly ids: readonly string[] }
    plan_more_than_usual: PlanDosed
    plan_less_than_usual: PlanDosed
    plan_sweeter_than_usual: { readonly sugarGPerL: number; readonly richGPerL: number }
    plan_far_off: { readonly plant: PlantSaid; readonly usualG: number }
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
    plan_only_in_season: OutOfSeason
    plan_no_syrup: { readonly dissolvesG: number }
    plan_care: { readonly bulky: boolean }
    plan_fruit_sugar: { readonly sugarG: Measured }
    plan_spent: { readonly keptBackMl: Measured; readonly rinse: 'syrup' | 'water' | null }
    plan_unknown_yours: PlanNamed
    plan_unknown_range: {
      readonly waterPercent: number
      readonly keptMinMlPerG: number
      readonly keptMaxMlPerG: number
    }
  }
  actions: Plain<'plan_drier' | 'plan_stronger' | 'plan_as_usual'> & {
    plan_with: { readonly plant: PlantSaid }
    /** So many bottles. */
    plan_fill: { readonly bottles: number }
  }
  cautions: {
    plan_unknown: PlanNamed & { readonly notes: readonly FoodNote[] }
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly plan: PlanMessages
  }
}
