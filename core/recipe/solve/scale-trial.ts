import { type Liquid, massG as liquidMassG, mix, part, volumeMl, water } from '../../liquid/liquid.ts'
import type { MaterialId } from '../../quantity/materials.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../portion.ts'
import { propagate, type Values } from '../propagate.ts'
import { sugarStays } from '../sugar-stays.ts'
import { type Sweetening, sweetLiquid } from '../sweetening.ts'
import { byTool, measuredOut, weighedOut } from '../tool-precision.ts'
import type { Adjustment } from './adjust.ts'
import { outcomeOf } from './outcome.ts'

/** What was stirred into a glass of it, and pleased. */
export interface GlassTrial {
  /** How much of the liqueur was in the glass, mL. */
  readonly glassMl: Measured
  readonly spirit: Portion | null
  readonly water: Portion | null
  readonly sweetening: Sweetening | null
}

const NONE = exactly(0)

interface Inputs {
  readonly liqueur: Portion
  readonly trial: GlassTrial
}

const timesOf = ({ liqueur, trial }: Values<Inputs>): number => volumeMl(liquidOf(liqueur)) / trial.glassMl

const spiritOf = ({ trial }: Values<Inputs>): Liquid | null => (trial.spirit === null ? null : liquidOf(trial.spirit))

const waterGOf = ({ trial }: Values<Inputs>): number => (trial.water === null ? 0 : liquidMassG(liquidOf(trial.water)))

/** `times` as much of it. */
const scaled = (liquid: Liquid, times: number): Liquid => part(liquid, times)

/** The same in all of a liqueur as pleased in a glass of it. */
export function scaleTrial(inputs: Inputs): Adjustment {
  const { trial } = inputs
  const made = (values: Values<Inputs>): Liquid => {
    const times = timesOf(values)
    const spirit = spiritOf(values)
    const sweet = values.trial.sweetening === null ? null : sweetLiquid([values.trial.sweetening])
    return mix(
      liquidOf(values.liqueur),
      ...(spirit === null ? [] : [scaled(spirit, times)]),
      water(waterGOf(values) * times),
      ...(sweet === null ? [] : [scaled(sweet, times)]),
    )
  }
  const amounts = propagate(inputs, (values) => {
    const times = timesOf(values)
    const spirit = spiritOf(values)
    return {
      spiritMl: spirit === null ? 0 : times * volumeMl(spirit),
      waterG: times * waterGOf(values),
      waterMl: times * volumeMl(water(waterGOf(values))),
      sugarG: times * (values.trial.sweetening?.massG ?? 0),
    }
  })
  const outcome = outcomeOf(inputs, made)
  const material: MaterialId = trial.sweetening?.material ?? 'white_sugar'
  const or = (amount: Measured, tool: typeof measuredOut): Measured =>
    amount.value === 0 ? NONE : byTool(amount, tool)
  return {
    spiritMl: or(amounts.spiritMl, measuredOut),
    waterG: or(amounts.waterG, weighedOut),
    waterMl: or(amounts.waterMl, measuredOut),
    sweetener: material,
    sugarG: or(amounts.sugarG, weighedOut),
    outcome,
    sugarStays: sugarStays(outcome.liquid),
  }
}
