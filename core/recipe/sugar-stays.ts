import { DomainError } from '../domain-error.ts'
import { abvPercent, type Liquid, sugarGPerL } from '../liquid/liquid.ts'
import { sugarLimitGPerL, sugarState } from '../liquid/solubility.ts'

/** Whether the sugar stays dissolved, as far as is known. */
export type SugarStays = 'dissolved' | 'may_crystallise' | 'not_known'

/** What stays dissolved at a strength, in round numbers, g/L. */
export const largestSoluble = (abvPercent: number): number => Math.floor(sugarLimitGPerL(abvPercent) / 10) * 10

/** Refuses a liquid whose sugar surely crystallises; `largestGPerL` is what stays dissolved at that strength. */
export function sugarStays(liquid: Liquid): SugarStays {
  const state = sugarState(liquid)
  if (state !== 'refused') return state
  throw new DomainError('not_soluble', 'sugar_crystallises', {
    sugarGPerL: sugarGPerL(liquid),
    abvPercent: abvPercent(liquid),
    largestGPerL: largestSoluble(abvPercent(liquid)),
  })
}
