import type { Measured } from '../../quantity/measured/measured.ts'

/**
 * Of measurements as they should be one in twenty lies outside a 95 % interval, and three in a thousand outside one and a
 * half of it; a number that slipped lies much further off.
 */
const SURPRISING_TIMES = 1.5

/** Whether a difference is more than its ± explains. */
export const surprises = ({ value, plusMinus }: Measured): boolean => Math.abs(value) > SURPRISING_TIMES * plusMinus
