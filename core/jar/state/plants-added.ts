import { mix, volumeMl, water } from '../../liquid/liquid.ts'
import { type PlantsRead, wordsOf } from '../../recipe/plan/find-plants.ts'
import { answeredFor } from '../../recipe/plan/unknown-plant.ts'
import { liquidOf } from '../../recipe/portion.ts'
import { valuesOf } from '../../recipe/propagate.ts'
import { weighedOut } from '../../recipe/tool-precision.ts'
import type { Ingredients, PlantIn } from '../entry/entry.ts'
import { isDriedForm, unknownIn } from '../entry/start-from-plan.ts'
import type { JarState } from './jar-state.ts'
import { plantsToAdd } from './later-plants.ts'

/** All that ever went into a jar while it steeped. */
const putIn = ({ happened }: JarState): readonly Ingredients[] =>
  happened.filter((entry) => entry.kind === 'started' || entry.kind === 'added')

const spiritMl = (parts: readonly Ingredients[]): number =>
  volumeMl(mix(...parts.flatMap(({ spirits, waterG }) => [...valuesOf(spirits).map(liquidOf), water(waterG.value)])))

/** Plants as they go into a jar: those only named as planned for later, or at their usual dose for all the spirit in it. */
export function plantsAdded({ plants, unknown }: PlantsRead, story: JarState, others: Ingredients): readonly PlantIn[] {
  const litres = spiritMl([...putIn(story), others]) / 1000
  const waiting = plantsToAdd(story)
  return [
    ...plants.map((found): PlantIn => {
      const { botanical, massG, count } = found
      const { id, names, dose } = botanical
      const planned = massG === null ? waiting.find((plant) => plant.id === id) : undefined
      if (planned !== undefined) return { ...planned, addOn: null }
      return {
        id,
        name: names.title,
        isDried: isDriedForm(botanical),
        massG: massG ?? weighedOut(dose.typicalGPerL * litres),
        count,
        isUsual: massG === null,
        words: wordsOf(found),
        addOn: null,
      }
    }),
    ...unknown.map(answeredFor).map(({ name, massG }) => unknownIn(name, massG)),
  ]
}
