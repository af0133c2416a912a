const SUCROSE_G_PER_MOL = 342.3
const GLUCOSE_AND_FRUCTOSE_G_PER_MOL = 360.31

/**
 * Sucrose expressed as the invert sugar it turns into by taking up one water, g/L (what food law counts).
 * Error: none beyond the molar masses; 95 g become 100.0 g.
 * Source: molar masses of C12H22O11 and of 2 C6H12O6: factor 1.0526; the definition is Regulation (EU) 2019/787, Annex I.
 */
export const asInvertSugarGPerL = (sugarGPerL: number): number =>
  (sugarGPerL * GLUCOSE_AND_FRUCTOSE_G_PER_MOL) / SUCROSE_G_PER_MOL
