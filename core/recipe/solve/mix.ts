import { type Liquid, mix as mixed } from '../../liquid/liquid.ts'
import { liquidOf, type Portion } from '../portion.ts'
import type { Values } from '../propagate.ts'
import { type SugarStays, sugarStays } from '../sugar-stays.ts'
import { type KnownSweetening, knownSweetenings, type Sweetening, sweetLiquid } from '../sweetening.ts'
import { type Outcome, outcomeOf } from './outcome.ts'

/** Liquids and what sweetens them; water is a portion without alcohol or sugar. */
export interface MixInputs {
  readonly portions: readonly Portion[]
  readonly sweetenings: readonly Sweetening[]
}

export interface Mixture {
  readonly outcome: Outcome
  readonly sugarStays: SugarStays
}

const pour = ({
  portions,
  sweetenings,
}: Values<{ portions: readonly Portion[]; sweetenings: readonly KnownSweetening[] }>): Liquid =>
  mixed(...portions.map(liquidOf), sweetLiquid(sweetenings))

/** What these amounts make. */
export function mix(inputs: MixInputs): Mixture {
  const outcome = outcomeOf({ ...inputs, sweetenings: knownSweetenings(inputs.sweetenings) }, pour)
  return { outcome, sugarStays: sugarStays(outcome.liquid) }
}
