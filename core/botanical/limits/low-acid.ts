import type { ShelfPlant } from './shelf-life.ts'

/**
 * Strength from the first day to the last below which botulism cannot be ruled out on a vegetable, % vol.
 * Source: Daifas et al., J. Food Prot. 66 (2003) 610–617, abstract: in broth 4 % ethanol by mass only delayed the toxin, 6 %
 * (about 7.5 % vol, derived) stopped it for a year, and the spores stayed alive. CDC MMWR 61(39) (2012) 782–784: people fell
 * ill of weak home-made alcohol with a potato in it. 20 is a margin for the wet inside of the pieces (judgement).
 */
export const LOW_ACID_ABV_PERCENT = 20

/** Fresh ones that grow it as vegetables do. Common practice, no source. */
const AS_VEGETABLES: ReadonlySet<string> = new Set([
  'chives',
  'jalapeno',
  'chilli_fresh',
  'birds_eye_chilli',
  'habanero',
])

/** Whether botulism may grow on it where nothing keeps it down: vegetables and garlic, fresh chillies. */
export const isLowAcid = ({ kind, id }: Pick<ShelfPlant, 'kind' | 'id'>): boolean =>
  kind === 'vegetable' || (id !== null && AS_VEGETABLES.has(id))

/** A strength is what its first decimal says: water is measured out in round numbers. */
const ROUNDING_PERCENT = 0.05

/** Whether something is too weak to rule it out. */
export const isTooWeakForLowAcid = (abvPercent: number): boolean => abvPercent < LOW_ACID_ABV_PERCENT - ROUNDING_PERCENT
