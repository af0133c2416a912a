import type { SourceKey } from './sources.ts'
import type { Trust } from './trust.ts'

/** What is never planned; a language has a sentence for each. */
export type RefusalId =
  | 'tobacco'
  | 'foxglove'
  | 'oleander'
  | 'yew'
  | 'hemlock'
  | 'water_hemlock'
  | 'aconite'
  | 'nightshade'
  | 'lily_valley'
  | 'colchicum'
  | 'veratrum'
  | 'hellebore'
  | 'jp_star_anise'
  | 'castor'
  | 'rue'
  | 'pennyroyal'
  | 'tansy'
  | 'tonka'
  | 'calamus'
  | 'sassafras'
  | 'kernels'
  | 'cherry_laurel'
  | 'elder_raw'
  | 'mushrooms'
  | 'st_johns_wort'
  | 'germander'
  | 'pa_plants'
  | 'aristolochia'
  | 'gelsemium'
  | 'rhododendron'
  | 'laburnum_etc'
  | 'mistletoe'
  | 'savin'
  | 'drugs'
  | 'industrial_alcohol'
  | 'animals'
  | 'rhubarb_tomato'
  | 'quinine_bark'
  | 'fig_leaf'
  | 'essential_oils'
  | 'foraged'
  | 'unnamed_plant'
  | 'wild_garlic'
  | 'wild_carrot_family'
  | 'self_dug_gentian'
  | 'florist_flowers'
  | 'elderberry'
  | 'dairy_egg'
  | 'stone_fruit_leaves'
  | 'medicines'
  | 'garden_poisons'

export interface Refused {
  readonly id: RefusalId
  /** In English, Italian and Latin, singular and plural, joined with commas; other languages are in `refused-elsewhere.ts`. */
  readonly names: string
  /** An id of the catalogue. */
  readonly instead: string | null
  readonly trust: Trust
  readonly sources: readonly SourceKey[]
}
