import type { Botanical } from '../../../core/botanical/botanical.ts'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { isFormAsked } from '../../../core/botanical/find/in-form.ts'
import { drinksIn } from '../../../core/recipe/drinks-in.ts'
import { readPlants } from '../../../core/recipe/plan/find-plants.ts'
import { type Call, call } from '../../calls/call.ts'

/** By which it is found again, with its state where that is not understood. */
export function typedName({ id, names, form }: Botanical): string {
  const noun = names.en[0] ?? names.title
  const isSaid = isFormAsked(botanicalById(id)) || form.state !== botanicalById(id).form.state
  return isSaid && !noun.startsWith(form.state) ? `${form.state} ${noun}` : noun
}

/** Spirits that are sold, the likeliest first, % vol. */
const SOLD_PERCENT = [40, 50, 60, 70, 80, 96]

/** A plan of a litre of spirit that suits a plant: what most have at home, where that will do. */
export function planOf(botanical: Botanical): Call {
  const { min, max } = botanical.spiritPercent
  const percent = SOLD_PERCENT.find((sold) => sold >= min && sold <= max) ?? Math.round(max)
  return call('plan', { of: readPlants(typedName(botanical)), spirit: drinksIn(`1 l ${percent}%`, { blends: false }) })
}
