import type { Measured } from '../../quantity/measured/measured.ts'

/** Two ends as their middle and half their distance. */
export const between = (min: number, max: number): Measured => ({ value: (min + max) / 2, plusMinus: (max - min) / 2 })

/** Of a variable that is spread evenly, half of the 95 % interval of many together, as a share of half its range. */
const EVEN = 1.96 / Math.sqrt(3)

/** A range of which nothing more is known, never below nothing. Source: JCGM 100:2008 (GUM), 4.3.7. */
export const evenly = (min: number, max: number): Measured => {
  const { value, plusMinus } = between(min, max)
  return { value, plusMinus: Math.min(value, EVEN * plusMinus) }
}
