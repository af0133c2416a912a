import type { Measured } from '../../quantity/measured/measured.ts'

/** Two ends as their middle and half their distance. */
export const between = (min: number, max: number): Measured => ({ value: (min + max) / 2, plusMinus: (max - min) / 2 })
