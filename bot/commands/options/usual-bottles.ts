import type { Bottles } from '../../../core/recipe/plan/parse-bottles.ts'
import { usualBottleMl } from '../../../core/recipe/plan/parse-bottles.ts'
import { type Kitchen, unitsIn } from '../../text/messages/kitchen.ts'

/** The bottle of whoever named no size, ml. */
export const usualBottleIn = (kitchen: Kitchen = 'metric'): number => usualBottleMl(unitsIn(kitchen).volume)

/** An input whose bottles without a size, `bottles:6`, are those that its kitchen fills. */
export function withUsualBottles<Input extends object>(input: Input, kitchen: Kitchen): Input {
  const { bottles } = input as { readonly bottles?: { readonly is: readonly Bottles[] } }
  if (bottles === undefined || bottles.is.every(({ size }) => size !== null)) return input
  const volumeMl = usualBottleIn(kitchen)
  const is = bottles.is.map((each) => (each.size === null ? { ...each, volumeMl } : each))
  return { ...input, bottles: { ...bottles, is } }
}
