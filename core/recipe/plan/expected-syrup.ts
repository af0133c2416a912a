import { massG, mix, sugar, volumeMl, water } from '../../liquid/liquid.ts'
import { dissolvedPartG } from '../../liquid/solubility.ts'
import { propagate } from '../propagate.ts'
import { outcomeOf } from '../solve/outcome.ts'
import { syrupFor } from '../solve/syrup-for.ts'
import { inputsOf, type Steeping, steepLiquids } from '../steep.ts'
import { sugarStays } from '../sugar-stays.ts'
import type { Targets } from '../targets.ts'
import { byTool, measuredOut, weighedOut } from '../tool-precision.ts'

/** The syrup that is expected; the real one is computed from what is measured after straining. */
export function expectedSyrup(steeping: Steeping, targets: Targets) {
  const inputs = inputsOf(steeping)
  const wish = { by: 'strength_and_sweetness', ...targets } as const
  const amounts = propagate(inputs, (values) => {
    const { waterG, sugarG } = syrupFor(steepLiquids(values).infusion, wish)
    const made = mix(water(waterG), sugar(sugarG))
    return {
      waterG,
      waterMl: volumeMl(water(waterG)),
      sugarG,
      syrupG: massG(made),
      syrupMl: volumeMl(made),
    }
  })
  const outcome = outcomeOf(
    { steeping: inputs, waterG: weighedOut(amounts.waterG.value), sugarG: weighedOut(amounts.sugarG.value) },
    (values) => mix(steepLiquids(values.steeping).infusion, water(values.waterG), sugar(values.sugarG)),
  )
  return {
    waterG: byTool(amounts.waterG, weighedOut),
    waterMl: byTool(amounts.waterMl, measuredOut),
    sugarG: byTool(amounts.sugarG, weighedOut),
    syrupG: byTool(amounts.syrupG, weighedOut),
    syrupMl: byTool(amounts.syrupMl, measuredOut),
    dissolvesG: dissolvedPartG(amounts.sugarG.value, amounts.waterG.value),
    outcome,
    sugarStays: sugarStays(outcome.liquid),
  }
}
