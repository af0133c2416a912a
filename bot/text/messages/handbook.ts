import type { Invocation } from '../../calls/invocation.ts'

/** How far an entry is to be trusted: the least sure of what it says. */
export type HandbookTrust = 'published' | 'computed' | 'common practice' | 'from memory'

/** A question that no command answers, and what there is to say. What depends on a jar is a computation instead. */
export interface HandbookEntry {
  readonly title: string
  /** The ways it is asked, in plain lower case: it is found by them. */
  readonly asked: readonly string[]
  /** Two to four sentences, the answer first. */
  readonly text: string
  readonly source: string
  readonly trust: HandbookTrust
  /** A line that goes on from there. */
  readonly next: Invocation | null
}

/** The entries of one topic. */
export type HandbookPart<Id extends string> = Readonly<Record<Id, HandbookEntry>>

export type SteepingId =
  | 'steep_temperature'
  | 'steep_light'
  | 'steep_shaking'
  | 'keep_under'
  | 'jar_fill'
  | 'spices_when'
  | 'steep_done'
  | 'steep_too_long'
  | 'second_steep'
  | 'add_later'
  | 'top_up'
  | 'heat_to_speed'
  | 'open_lid'
  | 'taste_strong'
  | 'keep_green'
  | 'quick_ones'

export type PlantsId =
  | 'foraging'
  | 'unknown_steeped'
  | 'sprayed'
  | 'peel_how'
  | 'pith'
  | 'unwaxed'
  | 'peeled_fruit'
  | 'juice_or_zest'
  | 'keep_peel'
  | 'frozen_fruit'
  | 'dried_for_fresh'
  | 'prick_fruit'
  | 'stones_whole'
  | 'crush_fruit'
  | 'wash_fruit'
  | 'ripe_fruit'
  | 'vanilla_split'
  | 'coffee_grind'
  | 'ginger_peel'
  | 'chilli_seeds'
  | 'green_walnut_when'
  | 'flowers_prepare'
  | 'cinnamon_kinds'
  | 'nuts_prepare'

export type SpiritId =
  | 'no_label'
  | 'which_spirit'
  | 'cheap_vodka'
  | 'low_strength_peel'
  | 'brown_spirit'
  | 'dilute_first'
  | 'wine_base'
  | 'fruit_water'
  | 'charcoal'
  | 'home_distilling'
  | 'freeze_stronger'
  | 'water_order'

export type StrainingId =
  | 'strain_cloth'
  | 'squeeze'
  | 'filter_order'
  | 'let_settle'
  | 'slow_filter'
  | 'kept_back'
  | 'rinse_plants'
  | 'spent_fruit'
  | 'spent_away'
  | 'fat_off'

export type SweeteningId =
  | 'dry_sugar'
  | 'boil_syrup'
  | 'cool_syrup'
  | 'which_water'
  | 'sugar_when'
  | 'honey'
  | 'brown_sugar'
  | 'other_syrups'
  | 'sweeteners'
  | 'icing_sugar'
  | 'glycerine'
  | 'sweetness_trial'
  | 'sweetness_words'
  | 'split_batch'
  | 'sweeten_again'
  | 'syrup_ratio'
  | 'acid'
  | 'sugar_crystals'
  | 'syrup_keeps'

export type StrengthId =
  | 'volumes_shrink'
  | 'usual_strength'
  | 'weak_keeps'
  | 'evaporation'
  | 'obscuration'
  | 'hydrometer_temperature'
  | 'no_hydrometer'
  | 'refractometer'
  | 'proof'
  | 'label_strength'

export type ClearingId =
  | 'citrus_cloud'
  | 'stays_clear'
  | 'clearing'
  | 'pectin_enzyme'
  | 'fining'
  | 'colouring'
  | 'anise_cloud'

export type ServingId =
  | 'freezer_keep'
  | 'freezes'
  | 'freezer_glass'
  | 'serve_temperature'
  | 'serving_size'
  | 'serve_mixed'
  | 'cook_with'
  | 'thick_cold'

export type KeepingId =
  | 'keep_time'
  | 'keep_opened'
  | 'fridge'
  | 'keep_cream'
  | 'rest'
  | 'headspace'
  | 'store_bottles'
  | 'label_date'
  | 'keep_strained'
  | 'keep_fresh_plants'

export type VesselsId =
  | 'which_jar'
  | 'plastic'
  | 'rubber_seal'
  | 'metal_lid'
  | 'closures'
  | 'lead_crystal'
  | 'pans'
  | 'clean_bottles'
  | 'bottle_fill'
  | 'reuse_bottles'
  | 'chemical_cleaned'
  | 'bleach_cleaned'
  | 'wood'

export type SafetyId =
  | 'flame'
  | 'heat_spirit'
  | 'methanol'
  | 'denatured'
  | 'strong_neat'
  | 'medicines'
  | 'illness'
  | 'driving'
  | 'sober_driver'
  | 'hangover'
  | 'pregnancy'
  | 'children'
  | 'pets'
  | 'essential_oils'
  | 'garlic'
  | 'plant_limits'
  | 'caffeine'
  | 'how_much_drink'
  | 'diabetes'
  | 'vegan'
  | 'spills'
  | 'no_drop'
  | 'dry_guests'
  | 'honey_babies'
  | 'herb_oil'
  | 'no_secret'
  | 'old_enough'

export type DairyId = 'cream' | 'condensed_milk' | 'egg' | 'plant_milk'

export type SocietyId =
  | 'selling'
  | 'giving_away'
  | 'home_made_allowed'
  | 'name_limoncello'
  | 'gift_label'
  | 'allergens'
  | 'posting'
  | 'tasting_table'
  | 'cost_rule'
  | 'presents'

export type KitchenId =
  | 'cups'
  | 'no_scales'
  | 'weigh_or_jug'
  | 'liqueur_words'
  | 'when_to_start'
  | 'first_batch'
  | 'scale_recipe'
  | 'mark_jar'
  | 'mix_plants'
  | 'without_alcohol'

export type HandbookId =
  | SteepingId
  | PlantsId
  | SpiritId
  | StrainingId
  | SweeteningId
  | StrengthId
  | ClearingId
  | ServingId
  | KeepingId
  | VesselsId
  | SafetyId
  | DairyId
  | SocietyId
  | KitchenId

export type Handbook = HandbookPart<HandbookId>
