import type { RefusalId } from './refused.ts'

/** Questions about names of which another meaning is dangerous, or that name no single plant. */
export type AddedAskId =
  | 'rosebay'
  | 'leopards_bane'
  | 'almond_extract'
  | 'mahleb'
  | 'cherry_laurel_fruit'
  | 'coumarin_herb'
  | 'wild_ginger'
  | 'costmary'
  | 'mugwort'
  | 'skullcap'
  | 'pine_tips'
  | 'berries_mixed'
  | 'spices_mixed'
  | 'sweet_things'
  | 'vanilla_made'
  | 'coffee_made'
  | 'not_listed'
  | 'blossom_cyanide'
  | 'rhubarb_root'
  | 'eucalyptus'
  | 'asafoetida'
  | 'seaweed'
  | 'wood_chips'

export type AskId =
  | AddedAskId
  | 'coffee'
  | 'bay'
  | 'chilli'
  | 'cinnamon'
  | 'mint'
  | 'fennel'
  | 'tea'
  | 'pine'
  | 'citronella'
  | 'pepper'
  | 'coriander'
  | 'artemisia'
  | 'walnut'
  | 'laurel'
  | 'wild_fennel'
  | 'elder'
  | 'crocus'
  | 'illicium'
  | 'juniperus'
  | 'almond_kernel'
  | 'stone_fruit'
  | 'rhubarb'
  | 'fig_tree'
  | 'conifer'
  | 'poppy'
  | 'currant'
  | 'chocolate'
  | 'green_pepper'

export interface AskBack {
  readonly id: AskId
  /** Asked only when one of these is all that was typed. */
  readonly words: string
  /** Ids of the catalogue. */
  readonly choices: readonly string[]
  readonly refused: readonly RefusalId[]
  /** What shops mostly sell by that word, where it is no less safe to go by than the others: taken for whoever cannot tell. */
  readonly usual?: string
  /** True where a name of the catalogue goes before. */
  readonly yields?: boolean
}
