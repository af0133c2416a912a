import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import { findFood } from '../../botanical/foods/find-food.ts'
import { type ShelfDrink, type ShelfPlant, shelfLife } from '../../botanical/limits/shelf-life.ts'
import { keepingOf } from '../../liquid/keeping.ts'
import { addMonths, dayFromIso, type IsoDay, isoDay } from '../../quantity/time/calendar-day.ts'
import type { PlantIn } from '../entry/entry.ts'
import { plantsPutIn } from '../entry/plants-put-in.ts'
import { abvPercentIn, contentsOf } from './contents.ts'
import type { JarState } from './jar-state.ts'
import { isCatalogued } from './liquid-steps.ts'

/** A plant as it went in: a food outside the catalogue has its kind too. */
const shelfPlantOf = ({ id, name }: Pick<PlantIn, 'id' | 'name'>): ShelfPlant =>
  id !== null && isCatalogued(id)
    ? { id, kind: botanicalById(id).kind }
    : { id: null, kind: findFood(name)?.food.kind ?? null }

/** All plants that ever went in. */
export const shelfPlantsIn = ({ happened }: Pick<JarState, 'happened'>): readonly ShelfPlant[] =>
  happened.flatMap(plantsPutIn).map(shelfPlantOf)

/** From when on the months of a drink count; null before it is strained. */
const keptFrom = ({ bottled, sweetened, strained }: JarState): IsoDay | null =>
  (bottled ?? sweetened ?? strained)?.day ?? null

/** What the jar has become; null where nothing is in it. */
function shelfDrinkOf(story: JarState): ShelfDrink | null {
  const { outcome, isEmpty } = contentsOf(story)
  return isEmpty ? null : { abvPercent: outcome.abvPercent.value, keeping: keepingOf(outcome) }
}

/**
 * Until when a closed bottle of it is at its best: the one date that every reply, label and reminder says. Null before it is
 * strained, where nobody has said, and of what may not keep. `drink`: what it is to become, where that is not in it yet.
 */
export function bestUntil(story: JarState, drink: ShelfDrink | null = shelfDrinkOf(story)): IsoDay | null {
  const from = keptFrom(story)
  const months = drink === null ? null : (shelfLife(shelfPlantsIn(story), drink)?.months ?? null)
  return from === null || months === null ? null : isoDay(addMonths(dayFromIso(from), months))
}

/** The same of what surely keeps, which is not asked here, and so known sooner: no other day is ever its best one. */
export function bestUntilIfItKeeps(story: JarState): IsoDay | null {
  const abvPercent = abvPercentIn(story)
  return bestUntil(story, abvPercent === null ? null : { abvPercent, keeping: 'keeps' })
}
