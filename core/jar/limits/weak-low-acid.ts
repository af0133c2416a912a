import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import { findFood } from '../../botanical/foods/find-food.ts'
import { isLowAcid, isTooWeakForLowAcid } from '../../botanical/limits/low-acid.ts'
import { volumeMl } from '../../liquid/liquid.ts'
import type { PlantIn } from '../entry/entry.ts'
import { plantsPutIn } from '../entry/plants-put-in.ts'
import { contentsOf } from '../state/contents.ts'
import type { JarState } from '../state/jar-state.ts'
import { type SpiritToAdd, spiritToAdd, withSpirit } from './spirit-to-add.ts'

/** A jar in which botulism cannot be ruled out. */
export interface WeakLowAcid {
  /** Its vegetables. */
  readonly plants: readonly Pick<PlantIn, 'id' | 'name'>[]
  readonly abvPercent: number
  /** The spirit that brings it to where it can; null where none does. */
  readonly add: SpiritToAdd | null
}

function isLowAcidIn({ id, name }: PlantIn): boolean {
  if (id !== null) return isLowAcid(botanicalById(id))
  const food = findFood(name)?.food
  return food !== undefined && isLowAcid({ ...food, id })
}

/** The vegetables that went into a jar, each once. */
export const lowAcidPlantsIn = ({ happened }: JarState): readonly Pick<PlantIn, 'id' | 'name'>[] => {
  const plants = happened.flatMap(plantsPutIn).filter(isLowAcidIn)
  return [...new Map(plants.map(({ id, name }) => [id ?? name, { id, name }])).values()]
}

const strengthOf = (story: JarState): number => contentsOf(story).outcome.abvPercent.value

/** Vegetables in what is weaker than rules botulism out (`LOW_ACID_ABV_PERCENT`); null where there are none, or it is strong enough. */
export function weakLowAcidIn(story: JarState): WeakLowAcid | null {
  const plants = lowAcidPlantsIn(story)
  if (plants.length === 0) return null
  const { outcome, isEmpty } = contentsOf(story)
  if (isEmpty || !isTooWeakForLowAcid(outcome.abvPercent.value)) return null
  const add = spiritToAdd(
    story,
    volumeMl(outcome.liquid),
    (each) => !isTooWeakForLowAcid(strengthOf(withSpirit(story, each))),
  )
  return { plants, abvPercent: outcome.abvPercent.value, add }
}
