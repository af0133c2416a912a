import type { Botanical } from '../../../core/botanical/botanical.ts'
import type { HazardKey } from '../../../core/botanical/evidence/hazards.ts'
import type { Message } from '../../text/words.ts'

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

/** The cautions about plants; the same hazard of several plants once. */
export const hazardCautions = (botanicals: readonly Botanical[]) =>
  planHazards(botanicals.flatMap((each) => each.hazards)).map((hazard) => ({
    group: 'cautions' as const,
    key: 'plan_hazard' as const,
    values: { hazard, ids: botanicals.filter((each) => each.hazards.includes(hazard)).map(({ id }) => id) },
  })) satisfies readonly Message<'cautions'>[]
