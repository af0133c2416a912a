import { densityGPerMl, liquidFrom } from '../../liquid/liquid.ts'
import { abvOfKnownSugar, type DensityAt } from '../../liquid/measure/gauge.ts'
import { stemReading } from '../../liquid/measure/stem.ts'
import type { StemScale } from '../../quantity/quantities.ts'

/** Of an example: what most liqueurs have, and where the methods are told apart best. Common practice, no source. */
const USUAL_PERCENT = 30

/** Between these an example is looked for, g/L: the sweetness of liqueurs, `/measure` being for 50 to 400. */
const SWEETNESSES_GPERL = Array.from({ length: 35 }, (_, at) => 60 + 10 * at)

const strengthOf = (at: DensityAt, sugarGPerL: number): number => {
  try {
    return abvOfKnownSugar(at, sugarGPerL)
  } catch {
    return Number.POSITIVE_INFINITY
  }
}

/** The sweetness, in whole tens of g/L, with which a liqueur of this density comes nearest to 30 % vol. */
export function exampleSugarGPerL(at: DensityAt): number {
  const far = (sugarGPerL: number) => Math.abs(strengthOf(at, sugarGPerL) - USUAL_PERCENT)
  return SWEETNESSES_GPERL.reduce((best, each) => (far(each) < far(best) ? each : best))
}

const read = (scale: StemScale, of: { readonly abvPercent: number; readonly sugarGPerL: number }): number =>
  stemReading(1000 * densityGPerMl(liquidFrom({ volumeMl: 1000, ...of })), scale)

/** What such a stem shows in a liqueur of 30 % vol once its alcohol is boiled off, of the density it had before. */
export const exampleAfter = (before: DensityAt, scale: StemScale): number =>
  read(scale, { abvPercent: 0, sugarGPerL: exampleSugarGPerL(before) })

/** What such a stem showed in a liqueur of 30 % vol before its alcohol was boiled off, of the sugar that is left. */
export const exampleBefore = (leftGPerL: number, scale: StemScale): number =>
  read(scale, { abvPercent: USUAL_PERCENT, sugarGPerL: leftGPerL })
