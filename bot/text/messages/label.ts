import type { CategoryId } from '../../../core/label/category.ts'
import type { ForGuests } from '../../../core/label/for-guests.ts'
import type { Region } from '../../../core/label/parse-region.ts'
import type { Tolerance } from '../../../core/label/strength-tolerance.ts'
import type { Verdict } from '../../../core/label/verdict.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { Call } from '../../calls/call.ts'
import type { Plain } from './plain.ts'

export interface FoundCategory {
  readonly region: Region
  readonly best: Verdict | null
}

export interface LabelMessages {
  headlines: {
    label: {
      readonly abvPercent: Measured
      readonly sugarGPerL: Measured
      readonly found: readonly FoundCategory[]
    }
  }
  rows: Plain<CategoryId | 'label_eu' | 'label_us' | 'label_uk'>
  cells: {
    verdict: { readonly verdict: Verdict }
    printed: { readonly region: Region; readonly labelPercent: number; readonly tolerance: Tolerance }
  }
  sure: {
    as_invert: {
      readonly invertGPerL: Measured
      /** To a tenth of a gram, for the limit is near. */
      readonly exact: boolean
    }
    near_limit: {
      readonly near: readonly ('strength' | 'sugar')[]
      readonly abvPercent: Measured
      readonly invertGPerL: Measured
    }
  }
  notes: Plain<'lemon_name' | 'natural_only' | 'eu_label_says' | 'us_label_says' | 'uk_label_says'> & {
    both_regions: { readonly line: Call }
    own_region: { readonly region: Region; readonly code: string }
    unknown_plant: { readonly typed: string }
    allergen_known: { readonly typed: string }
    law_liquorice: { readonly fromMgPerL: number; readonly rootGPerL: number }
    law_caffeine: { readonly fromMgPerL: number }
    law_sulphites: { readonly fromMgPerL: number }
  }
  cautions: Plain<'not_for_sale'> & {
    allergens: Pick<ForGuests, 'allergens'>
    for_guests: Pick<ForGuests, 'advice' | 'allergens'>
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly label: LabelMessages
  }
}
