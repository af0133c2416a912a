import type { Botanical } from '../../../core/botanical/botanical.ts'
import { typedName } from '../../../core/botanical/find/typed-name.ts'
import { parseStrength } from '../../../core/quantity/read/parse-strength.ts'
import { exampleIn } from '../../../core/quantity/write/example-in.ts'
import { type DrinkPart, drinksIn } from '../../../core/recipe/drinks-in.ts'
import { readPlants } from '../../../core/recipe/plan/find-plants.ts'
import { type Call, call } from '../../calls/call.ts'
import { type Kitchen, unitsIn } from '../../text/messages/kitchen.ts'

/** Spirits that are sold, the likeliest first, % vol. */
const SOLD_PERCENT = [40, 50, 60, 70, 80, 96]

/** A plan of the spirit that was said, else of a litre, or a quart, of one that suits a plant: what most have at home, where that will do. */
export function planOf(botanical: Botanical, kitchen: Kitchen = 'metric', spirit?: readonly DrinkPart[]): Call {
  const { min, max } = botanical.spiritPercent
  const percent = SOLD_PERCENT.find((sold) => sold >= min && sold <= max) ?? Math.round(max)
  const usual = () => drinksIn(exampleIn(`1 l ${percent}%`, unitsIn(kitchen)), { blends: false })
  // A vodka is as strong as it is sold, whatever would suit the plant.
  const isNamed = spirit?.some(({ strength, drink }) => strength === null && drink !== null) === true
  return call('plan', {
    of: readPlants(typedName(botanical)),
    spirit: spirit ?? usual(),
    ...(spirit?.some(({ strength }) => strength === null) && {
      strength: parseStrength(`${isNamed ? SOLD_PERCENT[0] : percent}%`),
    }),
  })
}
