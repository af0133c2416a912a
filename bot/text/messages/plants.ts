import type { Botanical, Limit, PlantState } from '../../../core/botanical/botanical.ts'
import type { Preparation } from '../../../core/botanical/evidence/preparation.ts'
import type { ProductFile } from '../../../core/botanical/evidence/product-files.ts'
import type { SteepEvidence } from '../../../core/botanical/evidence/steep-evidence.ts'
import type { MaterialId } from '../../../core/quantity/materials.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { UsualDose } from '../../../core/recipe/plan/usual-dose.ts'
import type { Plain } from './plain.ts'

export interface DoseSaid extends Pick<Botanical, 'timesDays'> {
  readonly id: string
  readonly state: PlantState
  /** For the spirit, or for a litre of it. */
  readonly dose: UsualDose
  /** As it was typed, and what its maker called it; null where none was named. */
  readonly spirit: { readonly amount: string; readonly drink: string | null } | null
}

export interface BotanicalMessages {
  headlines: {
    botanical: DoseSaid
    botanical_kinds: { readonly plants: number; readonly kinds: number }
    /** `month` 1 to 12; `isNow`: it is the one that it is. */
    botanical_ripe: { readonly month: number; readonly plants: number; readonly isNow: boolean }
    cautions_of: {
      readonly ids: readonly string[]
      readonly sweeteners: readonly MaterialId[]
      readonly ofPlants: number
      readonly ofMaking: number
    }
  }
  rows: Plain<
    | 'botanical_kind_citrus'
    | 'botanical_kind_berry'
    | 'botanical_kind_fruit'
    | 'botanical_kind_vegetable'
    | 'botanical_kind_herb'
    | 'botanical_kind_spice'
    | 'botanical_kind_root'
    | 'botanical_kind_bitter'
    | 'botanical_kind_flower'
    | 'botanical_kind_nut'
    | 'botanical_kind_coffee_tea_cocoa'
    | 'botanical_kind_wood'
    | 'botanical_latin'
    | 'botanical_form'
    | 'botanical_spirit'
    | 'botanical_taste'
    | 'botanical_usual'
    | 'botanical_latest'
    | 'botanical_rest'
    | 'botanical_water'
    | 'botanical_sugars'
    | 'botanical_given'
    | 'botanical_zest'
    | 'botanical_pieces'
    | 'botanical_kept'
    | 'botanical_season'
    | 'botanical_limit'
    | 'botanical_wise'
  >
  cells: {
    botanical_names: { readonly ids: readonly string[] }
    botanical_latin: { readonly latin: readonly string[] }
    botanical_form: Pick<Botanical, 'form' | 'bulky' | 'driedPerFresh'>
    botanical_spirit: Botanical['spiritPercent']
    botanical_taste: { readonly fromDays: number }
    botanical_span: { readonly minDays: number; readonly maxDays: number; readonly trust: Limit['trust'] }
    botanical_latest: { readonly latestDays: number | null }
    botanical_share: { readonly share: Botanical['waterFraction'] }
    botanical_zest: { readonly zest: NonNullable<Botanical['zestGPerFruit']> }
    botanical_pieces: Pick<Botanical, 'pieces'>
    botanical_given: { readonly sugarsGPerL: Measured; readonly extractGPerL: Measured }
    botanical_kept: Botanical['retainedMlPerG']
    botanical_season: { readonly months: readonly number[] | null }
    /** The same in few words. */
    botanical_most: { readonly gPerL: number }
    botanical_percent: { readonly min: number; readonly max: number }
    botanical_limit: { readonly limit: Limit; readonly dried: Limit | null }
    botanical_wise: { readonly limit: Limit }
  }
  actions: Plain<'botanical_plan'> & { botanical_plan_of: { readonly id: string } }
  notes: {
    /** `zone`: by which the half of the world is told; `isChosen`: they named it. */
    botanical_ripe_where: { readonly isSouth: boolean; readonly zone: string; readonly isChosen: boolean }
    botanical_corrected: { readonly ids: readonly string[] }
    botanical_form_taken: { readonly forms: readonly { readonly id: string; readonly state: string }[] }
    botanical_steps: {
      readonly steps: readonly Preparation[]
      /** The form that the steps are about, where another was asked for. */
      readonly knownAs: PlantState | null
    }
    botanical_evidence: { readonly evidence: SteepEvidence['key'] }
    botanical_habit: Pick<Botanical['timesDays'], 'byAnalogy' | 'trust'> & { readonly measured: boolean }
    botanical_file: { readonly file: ProductFile }
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly botanical: BotanicalMessages
  }
}
