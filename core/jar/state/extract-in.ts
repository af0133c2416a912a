import { dissolvedIn } from '../../liquid/liquid.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { propagate } from '../../recipe/propagate.ts'
import { believedSteps } from './believed-steps.ts'
import type { JarState } from './jar-state.ts'
import { liquidAfter } from './liquid-after.ts'

/** What is dissolved in a litre of a jar's liquid beside its sugars, g: what its plants and its sweetenings gave. */
export const extractIn = ({ happened }: JarState): Measured =>
  propagate(
    believedSteps(happened).map(({ step }) => step),
    (values) => ({ extractGPerL: dissolvedIn(liquidAfter(values).liquid).extractGPerL ?? 0 }),
  ).extractGPerL
