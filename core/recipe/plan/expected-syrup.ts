import { gramsOf, massG, mix, volumeMl, water } from '../../liquid/liquid.ts'
import type { MaterialId } from '../../quantity/materials.ts'
import { propagate } from '../propagate.ts'
import { outcomeOf } from '../solve/outcome.ts'
import { undissolved } from '../solve/syrup.ts'
import { syrupFor } from '../solve/syrup-for.ts'
import { inputsOf, type Steeping, steepLiquids } from '../steep.ts'
import { sugarStays } from '../sugar-stays.ts'
import { gramOf, sugarsFactorOf } from '../sweetening.ts'
import type { Targets } from '../targets.ts'
import { byTool, measuredOut, weighedOut } from '../tool-precision.ts'

/** The syrup that is expected; the real one is computed from what is measured after straining. */
export function expectedSyrup(steeping: Steeping, targets: Targets, sweetener: MaterialId) {
  const inputs = inputsOf(steeping)
  const wish = { by: 'strength_and_sweetness', ...targets } as const
  const sugarsFactor = sugarsFactorOf(sweetener)
  const amounts = propagate({ inputs, sugarsFactor }, (values) => {
    const gram = gramOf(sweetener, values.sugarsFactor)
    const { waterG, sugarG } = syrupFor(steepLiquids(values.inputs).infusion, wish, gram)
    const made = mix(water(waterG), gramsOf(gram, sugarG))
    return {
      waterG,
      waterMl: volumeMl(water(waterG)),
      sugarG,
      syrupG: massG(made),
      syrupMl: volumeMl(made),
    }
  })
  const outcome = outcomeOf(
    {
      steeping: inputs,
      waterG: weighedOut(amounts.waterG.value),
      sugarG: weighedOut(amounts.sugarG.value),
      sugarsFactor,
    },
    (values) =>
      mix(
        steepLiquids(values.steeping).infusion,
        water(values.waterG),
        gramsOf(gramOf(sweetener, values.sugarsFactor), values.sugarG),
      ),
  )
  return {
    sweetener,
    waterG: byTool(amounts.waterG, weighedOut),
    waterMl: byTool(amounts.waterMl, measuredOut),
    sugarG: byTool(amounts.sugarG, weighedOut),
    syrupG: byTool(amounts.syrupG, weighedOut),
    syrupMl: byTool(amounts.syrupMl, measuredOut),
    dissolvesG: undissolved(sweetener, amounts.sugarG.value, amounts.waterG.value),
    outcome,
    sugarStays: sugarStays(outcome.liquid),
  }
}
