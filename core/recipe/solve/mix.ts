import { type Liquid, mix as mixed, sugar } from '../../liquid/liquid.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../portion.ts'
import type { Values } from '../propagate.ts'
import { type SugarStays, sugarStays } from '../sugar-stays.ts'
import { type Outcome, outcomeOf } from './outcome.ts'

/** Liquids and sugar put together; water is a portion without alcohol or sugar. */
export interface Ingredients {
  readonly portions: readonly Portion[]
  readonly sugarG: Measured
}

export interface Mixture {
  readonly outcome: Outcome
  readonly sugarStays: SugarStays
}

const pour = ({ portions, sugarG }: Values<Ingredients>): Liquid => mixed(...portions.map(liquidOf), sugar(sugarG))

/** What these amounts make. */
export function mix(ingredients: Ingredients): Mixture {
  const outcome = outcomeOf(ingredients, pour)
  return { outcome, sugarStays: sugarStays(outcome.liquid) }
}
