import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { checkCeilings } from '../../../core/botanical/ceilings.ts'
import type { Ingredients, PlantIn } from '../../../core/jar/event.ts'
import type { Story } from '../../../core/jar/story.ts'
import { isSamePlant, plantsToAdd } from '../../../core/jar/to-add.ts'
import { ethanolG, mix, volumeMl, water } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured.ts'
import { weighedOut } from '../../../core/recipe/by-tool.ts'
import type { PlantsRead } from '../../../core/recipe/plan/find-plants.ts'
import { plantOf } from '../../../core/recipe/plan/plant-of.ts'
import { answeredFor, expectUsual } from '../../../core/recipe/plan/unknown-plant.ts'
import { liquidOf } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { inputsOf, steepLiquids } from '../../../core/recipe/steep.ts'
import { liquidHolding } from '../../../core/recipe/targets.ts'

/** All that ever went into a jar while it steeped. */
const putIn = ({ happened }: Story): readonly Ingredients[] =>
  happened.filter((entry) => entry.kind === 'started' || entry.kind === 'added')

const pouredIn = (parts: readonly Ingredients[]) => ({
  spirits: parts.flatMap(({ spirits }) => spirits),
  waterG: exactly(parts.reduce((sum, { waterG }) => sum + waterG.value, 0)),
  sugarG: exactly(parts.reduce((sum, { sugarG }) => sum + sugarG.value, 0)),
})

const spiritMl = (parts: readonly Ingredients[]): number => {
  const { spirits, waterG } = pouredIn(parts)
  return volumeMl(mix(...valuesOf(spirits).map(liquidOf), water(waterG.value)))
}

/** Plants as they go into a jar: those only named as planned for later, or at their usual dose for all the spirit in it. */
export function plantsAdded({ plants, unknown }: PlantsRead, story: Story, others: Ingredients): readonly PlantIn[] {
  const litres = spiritMl([...putIn(story), others]) / 1000
  const waiting = plantsToAdd(story)
  return [
    ...plants.map(({ botanical, massG, count }): PlantIn => {
      const { id, names, dose } = botanical
      const planned = massG === null ? waiting.find((plant) => plant.id === id) : undefined
      if (planned !== undefined) return { ...planned, addOn: null }
      return { id, name: names.title, massG: massG ?? weighedOut(dose.typicalGPerL * litres), count, addOn: null }
    }),
    ...unknown
      .map(answeredFor)
      .map(({ name, massG }): PlantIn => ({ id: null, name, massG, count: null, addOn: null })),
  ]
}

/** The foods that go in, each with all of it that is in the jar then. */
const foodsIn = (parts: readonly Ingredients[], added: Ingredients) =>
  added.plants
    .filter(({ id }) => id === null)
    .map((plant) => {
      const same = parts.flatMap(({ plants }) => plants).filter((each) => isSamePlant(each, plant))
      return { name: plant.name, massG: exactly(same.reduce((sum, { massG }) => sum + massG.value, 0)) }
    })

/** Throws `over_ceiling` where the jar with what is added would hold more of a plant than is safe. */
export function expectUnderCeilings(story: Story, added: Ingredients): void {
  const waiting: readonly PlantIn[] = plantsToAdd(story)
  const isIn = (plant: PlantIn): boolean =>
    plant.addOn === null || (waiting.includes(plant) && !added.plants.some((another) => isSamePlant(plant, another)))
  const parts = [...putIn(story).map((part) => ({ ...part, plants: part.plants.filter(isIn) })), added]
  const byId = new Map<string, number>()
  for (const { id, massG } of parts.flatMap(({ plants }) => plants)) {
    if (id !== null) byId.set(id, (byId.get(id) ?? 0) + massG.value)
  }
  const weighed = [...byId].map(([id, massG]) => ({ botanical: botanicalById(id), massG }))
  const plants = weighed.map(({ botanical, massG }) => plantOf(botanical, exactly(massG)))
  const { infusion } = steepLiquids(valuesOf(inputsOf({ ...pouredIn(parts), plants })))
  const { targets } = story.started.plan
  const holds = ethanolG(infusion)
  const finishedMl = targets === null || holds === 0 ? null : volumeMl(liquidHolding(holds, targets))
  checkCeilings(weighed, spiritMl(parts), finishedMl)
  expectUsual(foodsIn(parts, added), spiritMl(parts))
}
