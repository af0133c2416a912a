import { type Keeping, keepingOf } from '../../liquid/keeping.ts'
import { abvPercent, sugarGPerL, volumeMl } from '../../liquid/liquid.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import { propagate } from '../../recipe/propagate.ts'
import { believedSteps } from './believed-steps.ts'
import type { JarState } from './jar-state.ts'
import { liquidAfter } from './liquid-after.ts'
import { drawnStep } from './liquid-steps.ts'

/** What sugar on strained fruit is expected to draw out of it, sugar included; mL, % vol and g/L. */
export interface FruitGives {
  readonly volumeMl: Measured
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
  /** Of what lies on the fruit. */
  readonly keeping: Keeping
}

/** Null where no sugar lies on the fruit of a jar. Estimated, see `drawnFrom`. */
export function fruitGives({ onFruit, happened }: JarState): FruitGives | null {
  if (onFruit === null) return null
  const drawing = drawnStep({ waterG: exactly(0), sweetenings: [] }, { measured: null })
  const steps = [...believedSteps(happened).map(({ step }) => step), drawing]
  const found = propagate(steps, (values) => {
    const { drawn } = liquidAfter(values)
    return { volumeMl: volumeMl(drawn), abvPercent: abvPercent(drawn), sugarGPerL: sugarGPerL(drawn) }
  })
  return { ...found, keeping: keepingOf(found) }
}
