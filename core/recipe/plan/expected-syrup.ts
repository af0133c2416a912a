import { gramsOf, massG, mix, volumeMl, waterG } from '../../liquid/liquid.ts'
import { USUAL_MATERIAL } from '../../quantity/materials.ts'
import { exactly } from '../../quantity/measured/measured.ts'
import { propagate } from '../propagate.ts'
import { outcomeOf } from '../solve/outcome.ts'
import { undissolved } from '../solve/syrup.ts'
import { syrupFor } from '../solve/syrup-for.ts'
import { inputsOf, type Steeping, steepLiquids } from '../steep.ts'
import { sugarStays } from '../sugar-stays.ts'
import { fillerMlPerG, fillerOf, gramOf, sugarsFactorOf } from '../sweetening.ts'
import type { Targets } from '../targets.ts'
import { byTool, measuredOut, weighedOut } from '../tool-precision.ts'
import type { PlanWish } from './plan-wish.ts'

/** The syrup that is expected; the real one is computed from what is measured after straining. */
export function expectedSyrup(steeping: Steeping, targets: Targets, made: Pick<PlanWish, 'sweetener' | 'filler'>) {
  const [sweetener, filler] = [made.sweetener ?? USUAL_MATERIAL, made.filler ?? null]
  const inputs = inputsOf(steeping)
  const wish = { by: 'strength_and_sweetness', ...targets } as const
  const sugarsFactor = sugarsFactorOf(sweetener)
  const fillerFactor = filler === null ? exactly(1) : sugarsFactorOf(filler)
  const amounts = propagate({ inputs, sugarsFactor, fillerFactor }, (values) => {
    const gram = gramOf(sweetener, values.sugarsFactor)
    const instead = fillerOf(filler, values.fillerFactor)
    const { waterG: addedG, sugarG } = syrupFor(steepLiquids(values.inputs).infusion, wish, gram, instead)
    const made = mix(gramsOf(instead, addedG), gramsOf(gram, sugarG))
    return {
      waterG: addedG,
      waterMl: addedG * fillerMlPerG(filler),
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
      fillerFactor,
    },
    (values) =>
      mix(
        steepLiquids(values.steeping).infusion,
        gramsOf(fillerOf(filler, values.fillerFactor), values.waterG),
        gramsOf(gramOf(sweetener, values.sugarsFactor), values.sugarG),
      ),
  )
  return {
    sweetener,
    filler,
    waterG: byTool(amounts.waterG, weighedOut),
    waterMl: byTool(amounts.waterMl, measuredOut),
    sugarG: byTool(amounts.sugarG, weighedOut),
    syrupG: byTool(amounts.syrupG, weighedOut),
    syrupMl: byTool(amounts.syrupMl, measuredOut),
    dissolvesG: undissolved(sweetener, amounts.sugarG.value, amounts.waterG.value * waterG(fillerOf(filler))),
    outcome,
    sugarStays: sugarStays(outcome.liquid),
  }
}
