import { DomainError } from '../../domain-error.ts'
import { abvPercent, ethanolG, type Liquid, massG, mix, sugarG, volumeMl, water, waterG } from '../../liquid/liquid.ts'
import { findRoot } from '../../liquid/root.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../portion.ts'
import { propagate, type Values, valuesOf } from '../propagate.ts'
import { liquidHolding } from '../targets.ts'
import { byTool, measuredOut, weighedOut } from '../tool-precision.ts'
import { type Outcome, outcomeOf } from './outcome.ts'

export interface Dilution {
  readonly waterG: Measured
  readonly waterMl: Measured
  readonly outcome: Outcome
}

const pool = (spirits: Values<readonly Portion[]>): Liquid => mix(...spirits.map(liquidOf))

/** Grams of water that bring a liquid to a strength; its own sugar stays in it. */
function waterFor(from: Liquid, toAbvPercent: number): number {
  if (sugarG(from) === 0) {
    return waterG(liquidHolding(ethanolG(from), { abvPercent: toAbvPercent, sugarGPerL: 0 })) - waterG(from)
  }
  const excess = (addedG: number) => abvPercent(mix(from, water(addedG))) - toAbvPercent
  if (excess(0) <= 0) return 0
  let high = massG(from)
  while (excess(high) > 0) high *= 2
  return findRoot({ f: excess, low: 0, high, tolerance: 1e-12 * high })
}

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
    const exactG = waterFor(from, toAbvPercent)
    // A rounding of the solve is no water.
    const needG = Math.abs(exactG) > 1e-9 * massG(from) ? exactG : 0
    return { needG, needMl: needG * volumeMl(water(1)) }
  })
  const outcome = outcomeOf({ spirits, waterMl: measuredOut(needMl.value) }, (values) =>
    mix(pool(values.spirits), water(values.waterMl / volumeMl(water(1)))),
  )
  return { waterG: byTool(needG, weighedOut), waterMl: byTool(needMl, measuredOut), outcome }
}
