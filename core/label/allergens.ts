/** What a label has to name, or a host has to ask about. */
export type Allergen =
  | 'peanut'
  | 'walnut'
  | 'almond'
  | 'hazelnut'
  | 'cashew'
  | 'pecan'
  | 'brazil_nut'
  | 'pistachio'
  | 'macadamia'
  | 'sesame'
  | 'mustard'
  | 'celery'
  | 'sulphites'
  | 'milk_soya'
  | 'nut_traces'
  | 'cashew_family'
  | 'daisy_family'

/**
 * By id of the plant, worst first: nuts and sulphites are on the list of Regulation (EU) 1169/2011, Annex II (from
 * memory); the kin of cashew (Asia Pac Allergy 2019;9(3):e25) and of daisies (from memory) are not.
 * Nuts are exempt only where they are distilled, not where they are steeped.
 */
const BY_PLANT: readonly (readonly [id: string, allergen: Allergen])[] = [
  ['peanut', 'peanut'],
  ['walnut', 'walnut'],
  ['green_walnut', 'walnut'],
  ['almond_sweet', 'almond'],
  ['hazelnut', 'hazelnut'],
  ['cashew', 'cashew'],
  ['pecan', 'pecan'],
  ['brazil_nut', 'brazil_nut'],
  ['pistachio', 'pistachio'],
  ['macadamia', 'macadamia'],
  ['sesame', 'sesame'],
  ['mustard_seed', 'mustard'],
  ['celery', 'celery'],
  ['celery_seed', 'celery'],
  ['pink_pepper', 'cashew_family'],
  ['raisin', 'sulphites'],
  ['prune', 'sulphites'],
  ['apricot_dried', 'sulphites'],
  ['fig_dried', 'sulphites'],
  ['date', 'sulphites'],
  ['cranberry_dried', 'sulphites'],
  ['coconut_dried', 'sulphites'],
  ['dark_chocolate', 'milk_soya'],
  ['dark_chocolate', 'nut_traces'],
  ['cocoa_powder', 'nut_traces'],
  ['cocoa_nibs', 'nut_traces'],
  ['chamomile', 'daisy_family'],
  ['wormwood', 'daisy_family'],
  ['artichoke_leaf', 'daisy_family'],
  ['dandelion_flower', 'daisy_family'],
  ['calendula', 'daisy_family'],
  ['cornflower', 'daisy_family'],
  ['daisy', 'daisy_family'],
  ['burdock', 'daisy_family'],
  ['chicory_root', 'daisy_family'],
]

/** What these plants bring, each once. */
export const allergensOf = (plants: readonly string[]): readonly Allergen[] => [
  ...new Set(BY_PLANT.filter(([id]) => plants.includes(id)).map(([, allergen]) => allergen)),
]
