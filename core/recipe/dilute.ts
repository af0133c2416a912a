import { DomainError } from '../domain-error.ts'
import { abvPercent, ethanolG, type Liquid, massG, mix, volumeMl, water, waterG } from '../liquid/liquid.ts'
import type { Measured } from '../quantity/measured.ts'
import { byTool, measuredOut, weighedOut } from './by-tool.ts'
import { type Outcome, outcomeOf } from './outcome.ts'
import { liquidOf, type Portion } from './portion.ts'
import { propagate, type Values, valuesOf } from './propagate.ts'
import { liquidHolding } from './targets.ts'

export interface Dilution {
  readonly waterG: Measured
  readonly waterMl: Measured
  readonly outcome: Outcome
}

const pool = (spirits: Values<readonly Portion[]>): Liquid => mix(...spirits.map(liquidOf))

/** Water that brings spirits down to a strength; `toAbvPercent` must lie below theirs. */
export function dilute(spirits: readonly Portion[], toAbvPercent: number): Dilution {
  const spirit = pool(valuesOf(spirits))
  const own = abvPercent(spirit)
  // Rounding in the last digits must not refuse what is there already.
  if (own * (1 + 1e-12) < toAbvPercent) {
    throw new DomainError('unreachable', 'water_only_lowers', { abvPercent: own, toAbvPercent })
  }
  const { needG, needMl } = propagate({ spirits }, (values) => {
    const from = pool(values.spirits)
    const exactG = waterG(liquidHolding(ethanolG(from), { abvPercent: toAbvPercent, sugarGPerL: 0 })) - waterG(from)
    // A rounding of the solve is no water.
    const needG = Math.abs(exactG) > 1e-9 * massG(from) ? exactG : 0
    return { needG, needMl: needG * volumeMl(water(1)) }
  })
  const outcome = outcomeOf({ spirits, waterMl: measuredOut(needMl.value) }, (values) =>
    mix(pool(values.spirits), water(values.waterMl / volumeMl(water(1)))),
  )
  return { waterG: byTool(needG, weighedOut), waterMl: byTool(needMl, measuredOut), outcome }
}
