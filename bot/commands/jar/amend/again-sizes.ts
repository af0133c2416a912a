import { USUAL_BOTTLE_ML } from '../../../../core/recipe/plan/parse-bottles.ts'
import type { InputOf } from '../../../calls/signatures.ts'
import { bottlesGiven } from '../../plan/batch-options.ts'

type Bottles = NonNullable<InputOf<'again'>['bottles']>

/** Bottles whose size nobody said are said with that of their kitchen, where it is not the one that is read. */
export const withSizes = (bottles: Bottles): Bottles =>
  bottles.is.some(({ size, volumeMl }) => size === null && volumeMl !== USUAL_BOTTLE_ML)
    ? bottlesGiven(bottles.is)
    : bottles
