import { type Liquid, liquidFrom, liquidFromMass } from '../liquid/liquid.ts'
import { abvPercentAt20 } from '../measure/hydrometer.ts'
import { volumeMlAt20 } from '../measure/volume-at-20.ts'
import type { Measured } from '../quantity/measured.ts'
import type { Values } from './propagate.ts'

/** An amount of some liquid as a maker measured it. */
export interface Portion {
  /** Millilitres as read, or grams, by `by`. */
  readonly amount: Measured
  readonly by: 'volume' | 'mass'
  /** Temperature at which the volume was read; 20 where nothing was said. */
  readonly atC: number
  /** % vol; what the hydrometer showed where `abvAtC` is not 20. */
  readonly abvPercent: Measured
  readonly abvAtC: number
  readonly sugarGPerL: Measured
}

/** What a portion holds, its readings brought to 20 °C first. */
export function liquidOf(portion: Values<Portion>): Liquid {
  const abvPercent = portion.abvAtC === 20 ? portion.abvPercent : abvPercentAt20(portion.abvPercent, portion.abvAtC)
  const sugarGPerL = portion.sugarGPerL
  if (portion.by === 'mass') return liquidFromMass({ massG: portion.amount, abvPercent, sugarGPerL })
  const volumeMl =
    portion.atC === 20 ? portion.amount : volumeMlAt20(portion.amount, { abvPercent, sugarGPerL }, portion.atC)
  return liquidFrom({ volumeMl, abvPercent, sugarGPerL })
}
