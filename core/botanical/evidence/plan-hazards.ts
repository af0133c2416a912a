import { type HazardKey, hazards } from './hazards.ts'

/** Hazards of plants that a plan says as a caution; those of look and colour have notes, the rest a ceiling. */
const PLAN_HAZARDS = [
  'citrus_postharvest',
  'coumarin',
  'thujone',
  'stone_kernels',
  'bitter_almond',
  'elder',
  'nutmeg',
  'liquorice',
  'grapefruit_interaction',
  'phototoxic_peel',
  'star_anise_adulteration',
  'bay_lookalikes',
  'conifer_lookalikes',
  'veratrum_confusion',
  'carrot_family',
  'jasmine_double',
  'locust_double',
  'burdock_double',
  'foraging',
  'ornamental_flowers',
  'juniper_species',
  'saffron_dose',
  'asteraceae_allergy',
  'bile',
  'allergen_nuts',
  'allergen_celery',
  'allergen_mustard',
  'allergen_peanut',
  'allergen_sesame',
  'allergen_milk_soya',
  'allergen_nuts_trace',
  'allergen_generic',
  'pregnancy_breastfeeding',
  'anacardiaceae_allergy',
  'celery_kin',
  'latex_fruit',
  'legume_allergy',
  'lychee_seed',
  'bitter_gourd',
  'never_in_oil',
  'pinocamphone',
  'sedative_hops',
  'clover_medicines',
  'cranberry_warfarin',
  'turmeric_liver',
  'angelica_furocoumarins',
  'rhubarb_oxalate',
  'sulphites',
  'oak_food_grade',
  'glochids',
  'caffeine',
  'capsaicin',
] as const satisfies readonly HazardKey[]

export type PlanHazard = (typeof PLAN_HAZARDS)[number]

/** Those that a plan says of a plant with these hazards. */
export const planHazards = (of: readonly HazardKey[]): readonly PlanHazard[] =>
  PLAN_HAZARDS.filter((hazard) => of.includes(hazard))

/** Hazards of people who cannot bear a plant at all. */
const ALLERGENS: ReadonlySet<PlanHazard> = new Set([
  'allergen_nuts',
  'allergen_celery',
  'allergen_mustard',
  'allergen_peanut',
  'allergen_sesame',
  'allergen_milk_soya',
  'allergen_nuts_trace',
  'allergen_generic',
  'asteraceae_allergy',
  'anacardiaceae_allergy',
  'sulphites',
])

/** Poisons whose table calls them no worse than medium. */
const POISONS: ReadonlySet<PlanHazard> = new Set([
  'coumarin',
  'saffron_dose',
  'juniper_species',
  'ornamental_flowers',
  'rhubarb_oxalate',
])

/** Whether a guest has to be told who must not drink of it. */
export const isAllergen = (hazard: PlanHazard): boolean => ALLERGENS.has(hazard)

/** Whether a hazard is said in full every time: poison and allergens, and whatever may kill. */
export const isAlwaysSaidInFull = (hazard: PlanHazard): boolean =>
  ALLERGENS.has(hazard) || POISONS.has(hazard) || ['critical', 'high'].includes(hazards[hazard].severity)
