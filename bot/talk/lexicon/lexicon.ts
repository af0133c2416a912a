/** What a word or a phrase stands for, whatever the language. */
export type Concept =
  // How something is said.
  | 'asking'
  | 'hypothesis'
  | 'wish'
  | 'done_word'
  | 'true_strength'
  | 'denial'
  | 'greeting'
  // Questions.
  | 'how_much'
  | 'how_long'
  | 'when_take_out'
  | 'how_strong'
  | 'per_litre'
  | 'what_is'
  | 'may_i'
  | 'is_harmful'
  | 'tell_me_about'
  | 'worth_it'
  | 'would_it'
  | 'spent'
  | 'call_it'
  | 'put_off'
  | 'reminders_on'
  | 'never_mind'
  | Derived
  // What is done to liquids.
  | 'make'
  | 'have'
  | 'together'
  | 'pour_together'
  | 'thin'
  | 'infusion'
  | 'syrup'
  | 'finished_drink'
  | 'reads'
  | 'instrument'
  | 'refractometer'
  | 'boiled_off'
  | 'before_it'
  | 'after_it'
  | 'units_of_alcohol'
  | 'glass_of'
  | 'freezes'
  | 'costs'
  | 'cost_me'
  | 'price_for'
  | 'to_buy'
  // What happened to a jar.
  | 'shook'
  | 'shake'
  | 'strained'
  | 'strain'
  | 'sweetened'
  | 'sweeten'
  | 'filtered'
  /** How something was filtered, or added. */
  | 'racked'
  | 'fined'
  | 'layered'
  | 'on_fruit'
  | 'second_go'
  | 'all_at_once'
  | 'topped_up'
  | 'bottled'
  | 'bottle'
  | 'tasted'
  | 'added'
  | 'opened'
  | 'gave_away'
  | 'united'
  | 'divided'
  | 'took_out'
  | 'out_of_cold'
  | 'glass_trial'
  | 'keeps_long'
  | 'drink_first'
  | 'both_of_them'
  | 'away'
  | 'reminders_when'
  | 'privately'
  | 'in_here'
  | 'i_live'
  | 'put_in'
  | 'log_start'
  | 'stands'
  | 'place_word'
  | 'noted'
  /** Verbs of handing something on, of putting a part elsewhere, and of making one of two. */
  | 'handed_on'
  | 'other_vessel'
  | 'one_vessel'
  | 'emptied'
  | 'threw_out'
  | 'started'
  | 'start_word'
  | 'renamed'
  | 'take_back'
  | 'all_of_them'
  | 'a_jar'
  // What a person wants to see or have set.
  | 'what_is_on'
  | 'show_jar'
  /** How it stands with something, or since when it does. */
  | 'state_of'
  | 'print_label'
  | 'print_tag'
  | 'calendar'
  | 'notebook'
  | 'better_of'
  | 'again'
  | 'hand_on'
  | 'erase'
  | 'remind'
  | 'be_quiet'
  | 'shaking_reminders'
  | 'until'
  | 'this_week'
  | 'use_measures'
  | 'metric_measures'
  | 'us_measures'
  | 'imperial_measures'
  | 'freezer_at'
  | 'by_day'
  | 'what_can_i_make'
  | 'whats_ripe'
  | 'as_needed'
  | 'suits'
  // Changes of what was last worked out.
  | 'drier'
  | 'sweeter'
  | 'stronger'
  | 'weaker'
  | 'slightly'
  | 'twice'
  | 'thrice'
  | 'halve'
  | 'instead'
  | 'could_be'
  /** What comes of what was just worked out. */
  | 'what_of_it'
  | 'only_have'
  | 'without'
  | 'not_so'
  | 'yes'
  | 'no'
  | 'more'
  | 'why'
  | 'how_sure'
  | 'thanks'
  | 'help_me'
  | 'was_other_jar'
  // How a drink is to be.
  | 'wish_dry'
  | 'wish_medium'
  | 'wish_rich'
  | 'too_sweet'
  | 'too_dry'
  | 'too_strong'
  | 'too_weak'
  // What goes wrong, put together in `symptoms`.
  | 'cloud'
  | 'in_cold'
  | 'in_warm'
  | 'on_mixing'
  | 'since_sweetened'
  | 'weeks_later'
  | 'oily'
  | 'ring'
  | 'layers'
  | 'bitter'
  | 'harsh'
  | 'cloying'
  | 'not_sweet'
  | 'watery'
  | 'no_taste'
  | 'brown'
  | 'dark'
  | 'pale'
  | 'colour'
  | 'lost'
  | 'bottom'
  | 'bits'
  | 'jelly'
  | 'strings'
  | 'crystals'
  | 'sugar_word'
  | 'solid_ice'
  | 'mould'
  | 'on_top'
  | 'fizz'
  | 'swelling'
  | 'pops'
  | 'yeasty'
  | 'slow_filter'
  | 'black'
  | 'metal'
  | 'curdled'
  | 'creamy'
  | 'vinegar'
  | 'solvent'
  | 'stones'
  | 'broken'
  | 'glassware'
  | 'crystal_ware'
  | 'garlic'
  | 'slime'
  | 'sour'
  | 'spicy'
  | 'rotten_egg'
  | 'soapy'
  | 'hairs'
  | 'floating'
  | 'swims'
  | 'something'
  | 'insects'
  | 'skin_film'
  | 'spilt'
  | 'leaks'
  | 'left_in_sun'
  | 'forgotten'
  | 'lying'
  | 'heat'
  | 'infant'
  | 'pregnant'
  | 'gardening'
  /** Other kitchens, bars, breweries, what is cleaned. */
  | 'elsewhere'
  | 'kitchen'
  | 'fruit_part'
  | 'peel'
  | 'undissolved'
  | 'leaves'
  | 'cloth_taste'
  | 'musty'
  | 'plastic_taste'
  | 'odd_reading'
  | 'spirit_wrong'
  | 'strange_plant'
  | 'turned'
  | 'lid'
  | 'smell'
  | 'taste_word'
  | 'bottles_left'

/** What is done to a jar, told as done. */
export const DEEDS: ReadonlySet<Concept> = new Set<Concept>([
  'shook',
  'strained',
  'sweetened',
  'filtered',
  'fined',
  'bottled',
  'tasted',
  'added',
  'opened',
  'started',
  'gave_away',
  'united',
  'divided',
  'took_out',
  'stands',
  'noted',
  'on_fruit',
  'second_go',
])

/** Names of things that are poured. */
export type Poured = 'spirit' | 'sugar' | 'water' | 'bottle'

/** Told by the bits of a sentence, so that no language has words for it. */
export type Derived =
  | 'several_liquids'
  | 'wished_high'
  | 'wished_low'
  | 'with_amounts'
  | 'asking_bare'
  | 'drink_named'
  | 'plants_and_spirit'
  | 'sweet_stuff'
  | 'own_jar'
  | 'two_jars'
  | 'part_of_jar'
  | 'given_time'
  /** A piece came out of which nobody knows what it was of. */
  | 'piece_out'
  | 'rated'
  | 'housed'
  | 'refiltered'
  | 'away_now'
  | 'not_this_week'
  | 'deed_ahead'
  | 'syrup_in'
  | 'two_plants'
  | 'plant_amount'
  | 'measured_drink'
  | 'measured_anew'
  | 'spirit_and_sweet'
  | 'recipe_told'
  | 'amounts_planned'
  | 'several_planned'
  | 'things_alone'
  | 'only_thinned'
  | 'planned_by_day'
  | 'how_much_of_it'
  | 'bottles_of_jar'
  | 'for_bottles'
  | 'asked_of_jar'
  | 'into_jar'

/**
 * The words of a language, as data. Phrases are joined with commas, in lower case and without accents and apostrophes; `*` stands
 * for any letters at the end of a word, `~` for up to four words, `a|b` for either.
 */
export interface Lexicon {
  readonly id: 'en' | 'it'
  readonly concepts: Readonly<Record<Exclude<Concept, Derived>, string>>
  /** Drinks that are called otherwise than what they are made of, with the spirit they are usually made with. */
  readonly drinks: readonly (readonly [words: string, plant: string, spirit: string])[]
  /** Words that say nothing by themselves. */
  readonly fillers: string
  /** Words by which the language is told; never a name of anything. */
  readonly small: string
  /** Stand between an amount and what it is of. */
  readonly between: string
  /** Names of one word that mean something else in a sentence. */
  readonly notPlants: string
  /** Drinks by the strength that is meant where none is said; 0 where it has to be said. */
  readonly spirits: readonly (readonly [words: string, abvPercent: number])[]
  readonly sugars: string
  readonly waters: string
  readonly bottles: string
  /** Measures that tell no weight. */
  readonly loose: string
  /** Words directly before a strength that is, and before one that is wished. */
  readonly atStrength: string
  readonly toStrength: string
}
