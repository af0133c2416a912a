import type { SourceKey } from './sources.ts'
import type { Trust } from './trust.ts'

/** `quality` spoils the look, not the drinker. */
export type Severity = 'critical' | 'high' | 'medium' | 'low' | 'quality'

/** What to do about it: `refuse_foraged` when the plant was picked in the wild, `refuse_if_unsure` when it may be another. */
export type HazardAction = 'refuse' | 'refuse_foraged' | 'refuse_if_unsure' | 'warn'

export interface Hazard {
  readonly severity: Severity
  readonly action: HazardAction
  /** Of the facts behind it, best first. */
  readonly trust: readonly Trust[]
  readonly sources: readonly SourceKey[]
}

const table = {
  citrus_postharvest: {
    severity: 'medium',
    action: 'warn',
    trust: ['published', 'memory'],
    sources: ['eu_2023_2429', 'efsa_imazalil_2018', 'yolci_2022', 'alenazi_2025'],
  },
  coumarin: {
    severity: 'medium',
    action: 'warn',
    trust: ['published', 'derived', 'memory'],
    sources: ['efsa_coumarin_2008', 'bfr_2012', 'ec_88_388'],
  },
  tonka: { severity: 'high', action: 'refuse', trust: ['published', 'derived', 'memory'], sources: ['toma_2025'] },
  thujone: {
    severity: 'high',
    action: 'warn',
    trust: ['published'],
    sources: ['ec_1334_2008', 'ema_thujone', 'ec_88_388'],
  },
  estragole: { severity: 'low', action: 'warn', trust: ['published', 'memory'], sources: ['ec_1334_2008'] },
  methyleugenol: { severity: 'low', action: 'warn', trust: ['memory'], sources: ['ec_1334_2008'] },
  safrole: { severity: 'high', action: 'refuse', trust: ['published', 'memory'], sources: ['ec_88_388'] },
  hydrocyanic: { severity: 'high', action: 'warn', trust: ['published'], sources: ['efsa_2016', 'com_2006_427'] },
  stone_kernels: { severity: 'high', action: 'warn', trust: ['published', 'common_practice'], sources: ['efsa_2016'] },
  bitter_almond: { severity: 'high', action: 'refuse', trust: ['published'], sources: ['efsa_2016'] },
  elder: { severity: 'high', action: 'warn', trust: ['published', 'common_practice'], sources: ['cdc_1984'] },
  nutmeg: { severity: 'high', action: 'warn', trust: ['published'], sources: ['nutmeg_review'] },
  liquorice: {
    severity: 'medium',
    action: 'warn',
    trust: ['published', 'memory'],
    sources: ['scf_2003', 'dfg_sklm_2004', 'cfr_184_1408'],
  },
  grapefruit_interaction: {
    severity: 'high',
    action: 'warn',
    trust: ['published', 'memory'],
    sources: ['bailey_2013'],
  },
  phototoxic_peel: { severity: 'low', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  star_anise_adulteration: { severity: 'high', action: 'warn', trust: ['published'], sources: ['fda_star_anise'] },
  ramsons_lookalikes: {
    severity: 'critical',
    action: 'refuse_foraged',
    trust: ['published'],
    sources: ['anses_confusion', 'ages_wild_garlic'],
  },
  bay_lookalikes: {
    severity: 'critical',
    action: 'refuse_foraged',
    trust: ['published'],
    sources: ['efsa_compendium'],
  },
  conifer_lookalikes: {
    severity: 'critical',
    action: 'refuse_if_unsure',
    trust: ['memory'],
    sources: ['efsa_compendium'],
  },
  veratrum_confusion: {
    severity: 'critical',
    action: 'refuse_foraged',
    trust: ['published'],
    sources: ['veratrum_cases'],
  },
  carrot_family: { severity: 'critical', action: 'refuse_foraged', trust: ['memory'], sources: ['efsa_compendium'] },
  st_johns_wort: {
    severity: 'high',
    action: 'refuse',
    trust: ['published'],
    sources: ['henderson_2002', 'ec_1334_2008'],
  },
  rue: { severity: 'high', action: 'refuse', trust: ['published'], sources: ['emea_rue'] },
  tobacco: { severity: 'critical', action: 'refuse', trust: ['published'], sources: ['efsa_compendium'] },
  mushrooms: { severity: 'critical', action: 'refuse', trust: ['memory'], sources: ['unverified'] },
  foraging: {
    severity: 'high',
    action: 'refuse_if_unsure',
    trust: ['published'],
    sources: ['gelsemium_case', 'anses_confusion'],
  },
  essential_oils: { severity: 'high', action: 'refuse', trust: ['derived'], sources: ['ema_wormwood'] },
  pulegone: { severity: 'low', action: 'warn', trust: ['published', 'memory'], sources: ['ec_1334_2008', 'ec_88_388'] },
  teucrin_quassin: { severity: 'high', action: 'refuse', trust: ['published', 'memory'], sources: ['ec_1334_2008'] },
  calamus: { severity: 'high', action: 'refuse', trust: ['published'], sources: ['ec_1334_2008'] },
  capsaicin: { severity: 'low', action: 'warn', trust: ['published'], sources: ['ec_1334_2008'] },
  caffeine: { severity: 'low', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  juniper_species: { severity: 'medium', action: 'warn', trust: ['memory'], sources: ['efsa_compendium'] },
  saffron_dose: { severity: 'medium', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  asteraceae_allergy: { severity: 'low', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  pinocamphone: { severity: 'medium', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  sedative_hops: { severity: 'low', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  clover_medicines: { severity: 'medium', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  lychee_seed: { severity: 'high', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  bitter_gourd: { severity: 'high', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  never_in_oil: { severity: 'high', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  jasmine_double: { severity: 'critical', action: 'refuse_foraged', trust: ['published'], sources: ['gelsemium_case'] },
  locust_double: { severity: 'critical', action: 'refuse_foraged', trust: ['memory'], sources: ['efsa_compendium'] },
  burdock_double: { severity: 'critical', action: 'refuse_foraged', trust: ['memory'], sources: ['efsa_compendium'] },
  bile: { severity: 'low', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  ornamental_flowers: { severity: 'medium', action: 'warn', trust: ['common_practice'], sources: ['common_practice'] },
  glochids: { severity: 'low', action: 'warn', trust: ['common_practice'], sources: ['common_practice'] },
  stain: { severity: 'low', action: 'warn', trust: ['common_practice'], sources: ['common_practice'] },
  pectin: { severity: 'quality', action: 'warn', trust: ['published'], sources: ['igws_pectin'] },
  louche_anethole: { severity: 'quality', action: 'warn', trust: ['published'], sources: ['archer_2024'] },
  chlorophyll: { severity: 'quality', action: 'warn', trust: ['published'], sources: ['shen_2010'] },
  allergen_nuts: { severity: 'high', action: 'warn', trust: ['memory'], sources: ['eu_1169_2011'] },
  allergen_nuts_trace: { severity: 'low', action: 'warn', trust: ['common_practice'], sources: ['common_practice'] },
  allergen_celery: { severity: 'high', action: 'warn', trust: ['memory'], sources: ['eu_1169_2011'] },
  allergen_mustard: { severity: 'high', action: 'warn', trust: ['memory'], sources: ['eu_1169_2011'] },
  allergen_peanut: { severity: 'high', action: 'warn', trust: ['memory'], sources: ['eu_1169_2011'] },
  allergen_sesame: { severity: 'high', action: 'warn', trust: ['memory'], sources: ['eu_1169_2011'] },
  allergen_milk_soya: { severity: 'high', action: 'warn', trust: ['memory'], sources: ['eu_1169_2011'] },
  celery_kin: { severity: 'low', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  latex_fruit: { severity: 'low', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  legume_allergy: { severity: 'low', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  allergen_generic: { severity: 'low', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  pregnancy_breastfeeding: { severity: 'critical', action: 'refuse', trust: ['published'], sources: ['uk_cmo_2016'] },
  protected_plant: { severity: 'low', action: 'warn', trust: ['published'], sources: ['gi_genepi'] },
  anacardiaceae_allergy: { severity: 'high', action: 'warn', trust: ['published'], sources: ['pink_pepper_2019'] },
  cranberry_warfarin: { severity: 'medium', action: 'warn', trust: ['published'], sources: ['mhra_cranberry'] },
  turmeric_liver: {
    severity: 'low',
    action: 'warn',
    trust: ['published'],
    sources: ['menniti_2019', 'italy_turmeric_2019', 'anses_turmeric'],
  },
  angelica_furocoumarins: {
    severity: 'medium',
    action: 'warn',
    trust: ['published', 'memory'],
    sources: ['forycka_2019', 'knapp_2009'],
  },
  fig_leaf_furocoumarins: {
    severity: 'high',
    action: 'refuse',
    trust: ['published'],
    sources: ['zaynoun_1984', 'son_2017'],
  },
  rhubarb_oxalate: { severity: 'medium', action: 'warn', trust: ['memory'], sources: ['unverified'] },
  sulphites: { severity: 'low', action: 'warn', trust: ['memory'], sources: ['eu_1169_2011'] },
  oak_food_grade: { severity: 'low', action: 'warn', trust: ['common_practice'], sources: ['common_practice'] },
  dairy_egg: { severity: 'high', action: 'refuse', trust: ['published'], sources: ['colorado_eggs'] },
} as const satisfies Readonly<Record<string, Hazard>>

/** What can hurt; a language has a sentence for each. */
export type HazardKey = keyof typeof table

export const hazards: Readonly<Record<HazardKey, Hazard>> = table
