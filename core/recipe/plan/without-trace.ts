import { exactly } from '../../quantity/measured/measured.ts'
import type { Plan } from './plan.ts'

/** Grams, and grams in a litre of the liqueur, below which more sugar is none: no kitchen scale weighs them. */
const TRACE_G = 0.5
const TRACE_G_PER_L = 1

/** A plan as it is told: what little sugar it still lacks is left out. */
export function withoutTrace(plan: Plan): Plan {
  const { sugarG, outcome, waterG, waterMl } = plan
  const sugarGPerL = (sugarG.value / outcome.volumeMl.value) * 1000
  if (sugarG.value >= TRACE_G || sugarGPerL >= TRACE_G_PER_L) return plan
  return { ...plan, sugarG: exactly(0), syrupG: waterG, syrupMl: waterMl, dissolvesG: null }
}
