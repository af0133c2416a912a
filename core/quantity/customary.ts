/** US gallon, ml: NIST Handbook 44 Appendix C (231 cubic inches of 2.54 cm: 3785.411784 ml). */
export const US_GALLON_ML = 231 * 2.54 ** 3

/** A US cup and a US fluid ounce, ml: a 16th and a 128th of the gallon. */
export const CUP_ML = US_GALLON_ML / 16
export const US_FLUID_OUNCE_ML = US_GALLON_ML / 128

/** Imperial gallon, its pint and its fluid ounce, ml: UK Weights and Measures Act 1985, Schedule 1. */
export const IMPERIAL_GALLON_ML = 4546.09
export const IMPERIAL_PINT_ML = IMPERIAL_GALLON_ML / 8
export const IMPERIAL_FLUID_OUNCE_ML = IMPERIAL_GALLON_ML / 160

/** International pound and its ounce, g: agreement of 1959; UK Weights and Measures Act 1985, Schedule 1. */
export const POUND_G = 453.59237
export const OUNCE_G = POUND_G / 16

/** An ounce of sugar in a US quart, g/L: 28.3495 g in 946.353 ml. */
export const OUNCE_PER_QUART_G_PER_L = OUNCE_G / ((4 * CUP_ML) / 1000)
