import { volumeMl } from '../../liquid/liquid.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { tools } from '../../quantity/measured/precision.ts'
import { valuesOf } from '../../recipe/propagate.ts'
import { type Outcome, outcomeOf } from '../../recipe/solve/outcome.ts'
import type { ReadAmount } from '../entry/entry.ts'
import { believedSteps } from './believed-steps.ts'
import type { JarState } from './jar-state.ts'
import { liquidAfter } from './liquid-after.ts'
import type { LiquidStep } from './liquid-steps.ts'

/** The same amount as a kitchen scale tells it. */
const byScale = ({ value, plusMinus }: Measured): Measured => ({
  value,
  plusMinus: Math.min(plusMinus, Math.max(tools.scaleG, tools.scaleShare * value)),
})

const sharper = <Amount extends Pick<ReadAmount, 'amount'>>(amount: Amount): Amount => ({
  ...amount,
  amount: byScale(amount.amount),
})

function weighedStep(step: LiquidStep, before: readonly LiquidStep[]): LiquidStep {
  switch (step.kind) {
    case 'in':
      return { ...step, spirits: step.spirits.map(sharper) }
    case 'strained': {
      const { liquid } = liquidAfter(valuesOf([...before, step]))
      const expected: ReadAmount = {
        amount: { value: volumeMl(liquid), plusMinus: volumeMl(liquid) },
        by: 'volume',
        atC: 20,
      }
      return { ...step, measured: sharper(step.measured ?? expected) }
    }
    case 'filtered':
      return step.measured === null ? step : { ...step, measured: sharper(step.measured) }
    default:
      return step
  }
}

/** How well a jar would be known, had everything that was poured into it and came out of it been weighed. */
export function ifWeighed({ happened }: JarState): Outcome {
  const steps = believedSteps(happened).map(({ step }) => step)
  const weighed = steps.map((step, at) => weighedStep(step, steps.slice(0, at)))
  return outcomeOf(weighed, (values) => liquidAfter(values).liquid)
}
