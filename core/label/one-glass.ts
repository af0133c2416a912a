/**
 * Heavy drinking on a single occasion: this much or more, in grams of alcohol.
 * Source: World Health Organization, heavy episodic drinking (from memory).
 */
export const HEAVY_OCCASION_G = 60

/** The share of a woman's mass in which alcohol spreads as it does in blood (Widmark 1932; from memory). */
export const WIDMARK_SHARE = 0.55
/** A light adult, kg. */
export const LIGHT_ADULT_KG = 50
/** From so many grams of alcohol in a litre of blood on a life is in danger (NIAAA: 0.31 to 0.45 %; from memory). */
export const LIFE_THREATENING_G_PER_L = 3.1
/** Mass of a litre of blood, kg (from memory). */
export const BLOOD_KG_PER_L = 1.055

/** What brings a light adult there at one draught, 80.8 g by the figures above; a child is there with far less. */
export const DANGEROUS_GLASS_G = 80

/** What one glass does when one person drinks it at once; `dangerous` can kill. */
export type GlassDanger = 'heavy' | 'dangerous'

/** Of a glass with so many grams of alcohol, 0 or more; null below the least of the limits, which count themselves. */
export const glassDanger = (ethanolG: number): GlassDanger | null => {
  if (ethanolG >= DANGEROUS_GLASS_G) return 'dangerous'
  return ethanolG >= HEAVY_OCCASION_G ? 'heavy' : null
}
