import type { Happening, HappeningKind, Started } from '../../../core/jar/entry/entry.ts'
import type { LeftInPlants } from '../../../core/jar/pour/second-steep.ts'
import type { Unusual } from '../../../core/jar/record/check-sequence.ts'
import type { Clearing } from '../../../core/jar/state/clearing.ts'
import type { HiddenStrength } from '../../../core/jar/state/hidden-strength.ts'
import type { Expected } from '../../../core/jar/state/judge-measurement.ts'
import type { VesselFit } from '../../../core/jar/state/vessel-fit.ts'
import type { FiningId } from '../../../core/label/fining.ts'
import type { FreezerState } from '../../../core/liquid/freezer.ts'
import type { MaterialId } from '../../../core/quantity/materials.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { BatchDays } from '../../../core/recipe/batch.ts'
import type { PlannedFill } from '../../../core/recipe/plan/planned-fill.ts'
import type { Targets } from '../../../core/recipe/targets.ts'
import type { PlantName, SpiritSaid } from './ingredients.ts'
import type { PutOffUntil } from './jar-entries.ts'
import type { BecameSaid, LateStep, NowSaid, RecordedStep } from './jar-recorded.ts'
import type { TaskSaid } from './jar-tasks.ts'
import type { Plain } from './plain.ts'

/** An option of an entry, as it was typed before and is now, of `when` the day; null where nothing was. */
export interface CorrectedStep {
  readonly option: string
  readonly was: string | null
  readonly now: string
}

export interface NotMeasured {
  readonly name: string
  readonly entry: number
  /** As much as is expected. */
  readonly volumeMl: Measured
}

/** When a jar that was just started wants its maker. */
export interface StartDays {
  readonly days: BatchDays<IsoDay>
  /** What goes in later, by its day. */
  readonly later: readonly { readonly day: IsoDay; readonly plants: readonly PlantName[] }[]
  readonly today: IsoDay
}

export interface LaterPlants {
  readonly name: string
  readonly plants: readonly (PlantName & { readonly addOn: IsoDay })[]
}

export type StrengthAndSweetness = Pick<NowSaid, 'abvPercent' | 'sugarGPerL'>

/** A caution that a few words remind of, once it was read in full. */
export type CautionName =
  | 'flame'
  | 'cool_first'
  | 'sugar_alone'
  | 'may_crystallise'
  | 'sugar_limit_not_known'
  | 'bottle_bursts'
  | 'plan_hazard'
  | 'honey_infant'

type OtherUnusual = Exclude<
  Exclude<Unusual, { readonly expected: Expected }>['key'],
  'bottled_unsweetened' | 'added_spirit_after_straining'
>

/** What is unusual about a step that was recorded all the same. */
type UnusualMessages = Plain<`jar_${OtherUnusual}`> & {
  jar_bottled_unsweetened: { readonly name: string }
  /** Null: as strong as before. */
  jar_added_spirit_after_straining: { readonly isStronger: boolean | null }
  jar_reading_surprising: Expected
}

export interface StepMessages {
  headlines: {
    jar_started: LateStep & {
      readonly name: string
      readonly started: Started
      readonly spirits: readonly SpiritSaid[]
      /** False where it was called after its plants. */
      readonly isNamed: boolean
    }
    jar_recorded: RecordedStep
    jar_next_is: { readonly tasks: readonly TaskSaid[]; readonly today: IsoDay }
    jar_start_days: StartDays
    /** What still steeps is as it is to be, and is too much soon. */
    jar_out_now: undefined
    /** 0 of what is not worth adding. */
    jar_stir_in: {
      readonly sugarG: number
      readonly waterMl: number
      readonly sweetener: MaterialId
      /** What is poured in the place of water; null: water. */
      readonly filler: MaterialId | null
      readonly isSyrup: boolean
    }
    /** `short`: of the bottles that were planned, where it falls short of them. */
    jar_makes: BecameSaid & { readonly bottleMl: number; readonly short: PlannedFill | null }
    jar_became: BecameSaid
    /** Of what the first steep drew, what is in the plants still. */
    second_left: LeftInPlants
    /** What a freezer makes of it. */
    jar_in_freezer: { readonly state: FreezerState }
    jar_vessel: VesselFit
    /** What its maker wants no sugar in; whether it goes into bottles as it was strained. */
    jar_no_sugar: { readonly isAsItIs: boolean }
    /** Counted from the last layer. */
    layer_days: Pick<StartDays, 'days' | 'today'>
    /** What sugar on strained fruit will give. */
    fruit_gives: BecameSaid
    jar_renamed: { readonly before: string; readonly name: string }
    jar_all_shaken: LateStep & { readonly names: readonly string[] }
    jar_all_put_off: { readonly names: readonly string[] } & PutOffUntil
    jar_already: LateStep & { readonly names: readonly string[]; readonly kind: HappeningKind }
    jar_open_since: LateStep & { readonly name: string }
    jar_moved_on: { readonly name: string }
    jar_same_again: RecordedStep
    jar_begun_again: LateStep & { readonly name: string }
    jar_corrected: {
      readonly name: string
      readonly kind: HappeningKind
      readonly changes: readonly CorrectedStep[]
    }
    jar_split: {
      readonly name: string
      readonly into: string
      readonly leftMl: Measured
      readonly outMl: Measured
    }
    jar_combined: {
      readonly names: readonly [first: string, second: string]
      readonly into: string
      readonly volumeMl: Measured
    }
    jar_undone: LateStep & { readonly name: string; readonly happening: Happening | null }
    jar_all_undone: { readonly names: readonly string[]; readonly happening: Happening | null }
    jar_kept_after_all: { readonly names: readonly string[] }
    jar_undone_before: { readonly names: readonly string[] }
    jar_undo_held: { readonly names: readonly string[] }
    jar_gone: { readonly name: string }
  }
  rows: Plain<'jar_next' | 'jar_now' | 'jar_ready'>
  cells: {
    jar_next: { readonly tasks: readonly TaskSaid[]; readonly today: IsoDay }
    jar_now: NowSaid
    jar_ready: { readonly day: IsoDay }
  }
  notes: UnusualMessages &
    Plain<'jar_no_targets' | 'jar_unsweetened' | 'enzyme_first' | 'jar_out_of_freezer'> & {
      layer_overdone: { readonly plants: readonly PlantName[] }
      jar_named: { readonly name: string }
      jar_zone_assumed: { readonly zone: string }
      jar_not_measured: NotMeasured
      /** `at20`: what was read, brought to 20 °C; null where it was read there. */
      jar_reading: { readonly abvPercent: Measured; readonly read: Measured; readonly at20: Measured | null }
      /** A reading that is not taken, because what is dissolved hides more than is known of it. */
      jar_reading_hidden: HiddenStrength
      /** Of something animal, which a label names where the law lists it. */
      jar_fined: { readonly fining: FiningId; readonly isAllergen: boolean }
      second_estimated: LeftInPlants
      fruit_estimated: { readonly name: string }
      jar_targets_unreached: Targets
      jar_clearing: { readonly way: Clearing }
      /** What a jar was taken for. */
      jar_held: NowSaid & { readonly name: string }
      jar_best_until: { readonly until: IsoDay }
      jar_bottled_more: { readonly bottledMl: number; readonly volumeMl: Measured }
      jar_sweetened_otherwise: {
        readonly name: string
        readonly sweetener: MaterialId
        readonly filler: MaterialId | null
        readonly sugarG: number
        readonly waterMl: number
        /** More than twice as much, or less than half. */
        readonly isFarOff: boolean
      }
      jar_share_stands: { readonly ids: readonly string[] }
      jar_note_swallowed: { readonly text: string }
      jar_usual_amount: { readonly plants: readonly { readonly id: string; readonly massG: Measured }[] }
      /** The next that it asks for, where nothing is due on the day until which it was put off. */
      jar_later_none: { readonly name: string; readonly nextDay: IsoDay }
      /** All reminders are paused until a later day. */
      jar_later_paused: { readonly untilDay: IsoDay; readonly pausedUntil: IsoDay }
      jar_later_past: { readonly name: string; readonly lastDay: IsoDay }
      jar_plants_dropped: { readonly plants: readonly PlantName[] }
      /** Null days: none is known any more. */
      jar_strain_moved: { readonly days: { readonly from: IsoDay; readonly by: IsoDay } | null }
      jar_later_counted: LaterPlants
      jar_later_left_out: LaterPlants
    }
  cautions: {
    jar_not_neat: { readonly abvPercent: Measured; readonly isDiluted: boolean }
    jar_sugar_crystallises: { readonly outcome: StrengthAndSweetness; readonly mostGPerL: number }
    fruit_may_ferment: { readonly abvPercent: Measured }
    caution_again: { readonly names: readonly CautionName[] }
  }
  actions: Plain<
    | 'jar_sweeten'
    | 'jar_all_in'
    | 'jar_show'
    | 'jar_syrup'
    | 'jar_from_fruit'
    | 'jar_take_out'
    | 'jar_otherwise'
    | 'jar_syrup_in'
    | 'jar_filter_first'
    | 'jar_bottle'
    | 'jar_tag'
    | 'jar_calendar'
    | 'jar_labels'
    | 'jar_rate'
    | 'jar_again'
    | 'jar_undo'
    | 'jar_once_more'
    | 'jar_as_planned'
    | 'jar_show_kept'
    | 'jar_enter_again'
    | 'jar_begin_again'
    | 'jar_begin_another'
  > & {
    settings_zone: { readonly zone: string }
    /** A strength as it was typed. */
    jar_true_strength: { readonly abvPercent: Measured }
    /** Spirit that makes up for what lacks of the bottles that were planned. */
    jar_make_up: { readonly planned: number }
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly step: StepMessages
  }
}
