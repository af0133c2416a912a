import { freezesAtC, freezingPlusMinusC } from '../../liquid/freezing.ts'
import { abvPercent, densityGPerMl, ethanolG, type Liquid, massG, sugarGPerL, volumeMl } from '../../liquid/liquid.ts'
import { modelVolumePlusMinus } from '../../liquid/model-error.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { propagate, type Values, valuesOf } from '../propagate.ts'

/** What a liquid is, as a person asks for it; each with half of its 95 % interval. */
export interface Outcome {
  /** The liquid itself, as the inputs' own values make it. */
  readonly liquid: Liquid
  readonly volumeMl: Measured
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
  readonly densityGPerMl: Measured
  readonly massG: Measured
  readonly freezesAtC: Measured
  readonly ethanolG: Measured
}

const describe = (liquid: Liquid) => ({
  volumeMl: volumeMl(liquid),
  abvPercent: abvPercent(liquid),
  sugarGPerL: sugarGPerL(liquid),
  densityGPerMl: densityGPerMl(liquid),
  massG: massG(liquid),
  freezesAtC: freezesAtC(liquid),
  ethanolG: ethanolG(liquid),
})

/**
 * What comes of measured inputs: the inputs' own ± propagated, the model's added once (its volume's relative error is
 * also that of strength, sweetness and density; its freezing point has an error of its own).
 */
export function outcomeOf<In>(inputs: In, make: (values: Values<In>) => Liquid): Outcome {
  const central = make(valuesOf(inputs))
  const spread = propagate(inputs, (values) => describe(make(values)))
  const model = modelVolumePlusMinus(central)
  const widened = ({ value, plusMinus }: Measured, ownPlusMinus: number): Measured => ({
    value,
    plusMinus: Math.hypot(plusMinus, ownPlusMinus),
  })
  const scaled = (measured: Measured): Measured => widened(measured, measured.value * model)
  return {
    liquid: central,
    volumeMl: scaled(spread.volumeMl),
    abvPercent: scaled(spread.abvPercent),
    sugarGPerL: scaled(spread.sugarGPerL),
    densityGPerMl: scaled(spread.densityGPerMl),
    massG: spread.massG,
    freezesAtC: widened(spread.freezesAtC, freezingPlusMinusC(central)),
    ethanolG: spread.ethanolG,
  }
}
