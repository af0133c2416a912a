import type { Measured } from '../quantity/measured/measured.ts'
import { digits } from '../quantity/measured/shown-digits.ts'

/**
 * What a maker's tools make of an amount that a recipe names. Common practice, no source: a kitchen scale within 1 g or
 * 0.5 %, a measuring jug within 2 %, whichever is larger.
 */
export const weighedOut = (massG: number): Measured => ({
  value: massG,
  plusMinus: massG === 0 ? 0 : Math.max(1, massG * 0.005),
})

export const measuredOut = (volumeMl: number): Measured => ({ value: volumeMl, plusMinus: volumeMl * 0.02 })

/** An amount to measure out: the spread of the right one and the tool's own, in quadrature. */
export const byTool = (amount: Measured, tool: (value: number) => Measured): Measured => ({
  value: amount.value,
  plusMinus: Math.hypot(amount.plusMinus, tool(amount.value).plusMinus),
})

/** An amount as it is shown to be measured out, ml. */
export const pouredMl = (volumeMl: number): number => digits(volumeMl, measuredOut(volumeMl).plusMinus).roundedValue

/** An amount as it is shown to be weighed out, g. */
export const weighedG = (massG: number): number => digits(massG, weighedOut(massG).plusMinus).roundedValue
