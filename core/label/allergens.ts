/** What a label has to name, or a host has to ask about. */
export type Allergen = 'walnut' | 'almond' | 'hazelnut' | 'sulphites' | 'nut_traces' | 'cashew_family' | 'daisy_family'

/**
 * By id of the plant, worst first: nuts and sulphites are on the list of Regulation (EU) 1169/2011, Annex II (from
 * memory); the kin of cashew (Asia Pac Allergy 2019;9(3):e25) and of daisies (from memory) are not.
 * Nuts are exempt only where they are distilled, not where they are steeped.
 */
const BY_PLANT: ReadonlyMap<string, Allergen> = new Map([
  ['green_walnut', 'walnut'],
  ['almond_sweet', 'almond'],
  ['hazelnut', 'hazelnut'],
  ['pink_pepper', 'cashew_family'],
  ['raisin', 'sulphites'],
  ['cocoa_nibs', 'nut_traces'],
  ['chamomile', 'daisy_family'],
  ['wormwood', 'daisy_family'],
  ['artichoke_leaf', 'daisy_family'],
])

/** What these plants bring, each once. */
export const allergensOf = (plants: readonly string[]): readonly Allergen[] => [
  ...new Set([...BY_PLANT].filter(([id]) => plants.includes(id)).map(([, allergen]) => allergen)),
]
