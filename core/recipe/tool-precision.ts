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

/** A step that a cook can tell apart in so much of it, ml or g: about a hundredth from 100 on. Judgement. */
function kitchenStep(amount: number): number {
  if (amount >= 100) return 10 ** (Math.floor(Math.log10(amount)) - 2 + Number(amount < 1000))
  if (amount >= 20) return 5
  return amount >= 10 ? 1 : amount >= 1 ? 0.5 : 0.1
}

/** An amount as a cook says it, ml or g, and half of the step it is rounded to; never rounded to nothing. */
export function kitchenRounded(amount: number): Measured {
  if (amount === 0) return { value: 0, plusMinus: 0 }
  const step = kitchenStep(amount)
  return { value: Number((Math.max(1, Math.round(amount / step)) * step).toPrecision(12)), plusMinus: step / 2 }
}

/** Of sugar in a litre a step that a kitchen scale and a jug can tell apart, g/L: their 1 g and 2 % of some 250 g/L. Judgement. */
const SWEETNESS_STEP_G_PER_L = 5

/** A sweetness as a cook says it, g/L: to 5, and under 5 to 1. */
export const kitchenSweetness = (sugarGPerL: number): number =>
  sugarGPerL < SWEETNESS_STEP_G_PER_L
    ? Math.round(sugarGPerL)
    : SWEETNESS_STEP_G_PER_L * Math.round(sugarGPerL / SWEETNESS_STEP_G_PER_L)
