import type { FreezerState } from '../../../core/liquid/freezer.ts'
import type { MaterialId } from '../../../core/quantity/materials.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { PlannedFill } from '../../../core/recipe/plan/planned-fill.ts'
import type { Call } from '../../calls/call.ts'
import type { BottlesSaid } from './ingredients.ts'
import type { Plain } from './plain.ts'

/** What a freezer makes of a drink, and how cold that freezer is. */
export interface FrozenSaid {
  readonly state: FreezerState
  readonly freezerC: number
}

export interface MadeDrink {
  readonly volumeMl: Measured
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
  readonly freezer: FrozenSaid
  /** That temperature was asked, so it is said. */
  readonly isFreezerAsked?: boolean
  /** Usual bottles that it fills, where it is a drink to be bottled. */
  readonly bottles?: readonly BottlesSaid[]
  /** Of those that were planned, where it falls short of them. */
  readonly short?: PlannedFill | null
}

export interface SyrupSaid extends MadeDrink {
  /** What stands for the water; null for water. */
  readonly filler: MaterialId | null
  readonly sweetener: MaterialId
  readonly sugarG: Measured
  readonly waterMl: Measured
  /** Null where the water does not dissolve the sugar, so that no syrup can be made first. */
  readonly syrupG: Measured | null
  /** What of the infusion to use; null for all of it. */
  readonly infusionMl: Measured | null
  /** All of the infusion as it was typed, where it was. */
  readonly typed?: string | undefined
}

export interface CalculateMessages {
  headlines: {
    makes: MadeDrink
    syrup: SyrupSaid
    /** Of a jar that still steeps: what it will take once it is strained. */
    syrup_expected: Pick<SyrupSaid, 'filler' | 'sweetener' | 'sugarG' | 'waterMl' | 'syrupG'> & {
      readonly name: string
    }
    syrup_expected_of: { readonly abvPercent: number; readonly sugarGPerL: number }
    styles: {
      readonly infusionMl: Measured
      readonly abvPercent: Measured
      readonly count: number
      readonly typed: string | null
    }
    dilute: { readonly waterMl: Measured; readonly abvPercent: Measured }
    adjust: MadeDrink & {
      readonly spiritMl: Measured
      readonly waterMl: Measured
      readonly sweetener: MaterialId
      readonly sugarG: Measured
    }
  }
  rows: Plain<
    | 'infusion'
    | 'sugar'
    | 'water'
    | 'syrup'
    | 'spirit'
    | 'volume'
    | 'strength'
    | 'sweetness'
    | 'alcohol'
    | 'freezes'
    | 'dry'
    | 'everyday'
    | 'rich'
    | 'light'
    | 'usual'
    | 'strong'
  >
  cells: {
    pour: { readonly volumeMl: Measured }
    weigh: { readonly massG: Measured; readonly sweetener: MaterialId }
    volume_spread: { readonly volumeMl: Measured }
    mass: { readonly massG: Measured }
    water: { readonly filler?: MaterialId | null; readonly waterMl: Measured; readonly waterG: Measured }
    syrup: { readonly syrupMl: Measured; readonly syrupG: Measured }
    spirit: { readonly spiritMl: Measured; readonly abvPercent: number }
    strength_spread: { readonly abvPercent: Measured }
    sweetness_spread: { readonly sugarGPerL: Measured }
    freezes: { readonly freezesAtC: Measured; readonly freezer: FrozenSaid }
    /** What the one below adds and makes, in few words. */
    style_short: {
      readonly filler: MaterialId | null
      readonly sweetener: MaterialId
      readonly sugarG: Measured
      readonly waterMl: Measured
      /** What of the infusion to use; null for all of it. */
      readonly infusionMl: Measured | null
      readonly volumeMl: Measured
      readonly abvPercent: Measured
    }
    style: {
      readonly filler: MaterialId | null
      readonly sweetener: MaterialId
      readonly sugarG: Measured
      readonly waterMl: Measured
      readonly volumeMl: Measured
      readonly abvPercent: Measured
      readonly sugarGPerL: Measured
      readonly freezer: FrozenSaid
    }
  }
  sure: {
    spread: { readonly abvPercent: Measured; readonly sugarGPerL: Measured; readonly byVolume: boolean }
  }
  notes: Plain<
    | 'percent_vol'
    | 'grams_per_litre'
    | 'us_measure'
    | 'us_proof'
    | 'decimal_point'
    | 'thousands_separator'
    | 'sugar_ounces'
    | 'whole_fruit'
    | 'sugar_by_volume'
    | 'volume_at_20'
    | 'strength_at_20'
    | 'unsweetened'
    | 'plain_parts'
    | 'strained_strength'
    | 'nothing_dissolved'
    | 'fresh_plants'
    | 'fresh_plants_why'
    | 'settle'
    | 'sweet_reading'
  > & {
    adjust_bottles: {
      readonly bottles: readonly { readonly count: number; readonly volumeMl: number }[]
      readonly leftoverMl: number
    }
    /** In a glass first, to whole millilitres and grams. */
    adjust_try: {
      readonly glassMl: number
      readonly spiritMl: number
      readonly spiritPercent: number | null
      /** What its maker called it. */
      readonly drink: string | null
      readonly waterMl: number
      readonly sugarG: number
      readonly sweetener: MaterialId
    }
    /** Nobody said which spirit. */
    /** A jar whose syrup is still to come goes by what it was planned to be. */
    numbers_planned: { readonly jar: string }
    adjust_own_spirit: { readonly spiritPercent: number; readonly drink: string | null; readonly line: Call }
    bottle_named: { readonly names: readonly string[] }
    strength_drifts: { readonly abvPercent: Measured; readonly line: Call }
    as_before: { readonly what: 'strength' | 'sweetness' }
    syrup_by_weight: { readonly syrupG: Measured }
    strength_expected: { readonly abvPercent: Measured; readonly line: Call }
    /** What went in makes another strength than was read. */
    strength_surprising: { readonly abvPercent: Measured }
    flash_point: { readonly lowC: number }
    bounded: { readonly leftMl: number }
  }
  cautions: Plain<
    'flame' | 'cool_first' | 'sugar_alone' | 'may_crystallise' | 'sugar_limit_not_known' | 'bottle_bursts'
  > & {
    note_names: { readonly names: readonly string[] }
    syrup_too_thick: { readonly dissolvesG: number }
    /** A drink that burns as it is. */
    not_neat: { readonly abvPercent: Measured }
  }
  actions: Plain<'start_jar' | 'adjust_done' | 'adjust_sweet'> & {
    style: { readonly abvPercent: number; readonly sugarGPerL: number }
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly calculate: CalculateMessages
  }
}
