/**
 * Cubic expansion of soda-lime glass, per K: hydrometers, jars and jugs.
 * Source: OIML R 22, tables VIII and IX.
 */
export const GLASS_EXPANSION_PER_K = 25e-6
