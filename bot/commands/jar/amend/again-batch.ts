import type { PlantIn } from '../../../../core/jar/entry/entry.ts'
import { ingredientsOfWhole } from '../../../../core/jar/state/batch-facts.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { abvPercent, ethanolG } from '../../../../core/liquid/liquid.ts'
import { exactly } from '../../../../core/quantity/measured/measured.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { type Batch, scale } from '../../../../core/recipe/batch.ts'
import { poured, steepsAtPercent } from '../../../../core/recipe/code/recipe-wish.ts'
import type { Portion } from '../../../../core/recipe/portion.ts'

/** The same plant named twice is once as much of it. */
const joinPlants = (plants: readonly PlantIn[]): readonly PlantIn[] => {
  const keyOf = ({ id, name }: PlantIn): string => id ?? `“${name}`
  return [...new Set(plants.map(keyOf))].map((key) => {
    const same = plants.filter((plant) => keyOf(plant) === key)
    const [first] = same
    const massG = exactly(same.reduce((sum, plant) => sum + plant.massG.value, 0))
    return same.length === 1 ? first! : { ...first!, count: null, massG }
  })
}

/** How many times as much goes in: by the alcohol, so that a glass of it holds as much of the plants as before. */
export const factorOf = (story: JarState, other: readonly Portion[] | null): number =>
  other === null ? 1 : ethanolG(poured(other)) / ethanolG(poured(ingredientsOfWhole(story).spirits))

/** With other spirit only their size, as many as it fills. */
export const bottlesAgain = ({ bottles }: Pick<Batch, 'bottles'>, isOther: boolean): Batch['bottles'] =>
  isOther ? bottles.slice(0, 1).map(({ volumeMl }) => ({ count: null, volumeMl })) : bottles

/** Everything that went in, by the alcohol, brought to the strength at which it steeped where water went in first. */
export function batchAgain(story: JarState, other: readonly Portion[] | null): Batch<IsoDay> {
  const { kind: _, ...started } = story.started
  const { waterG } = started
  const ingredients = ingredientsOfWhole(story)
  // One that was strained before its plants went in is planned as it was begun.
  const plants = ingredients.plants.length > 0 ? ingredients.plants : started.plants
  const all = { ...started, ...ingredients, plants: joinPlants(plants), waterG }
  const batch = scale(all, factorOf(story, other))
  const steeped = steepsAtPercent(started)
  const isStronger = waterG.value > 0 && abvPercent(poured(other ?? batch.spirits)) > steeped
  return {
    ...batch,
    bottles: bottlesAgain(started, other !== null),
    named: { ...batch.named, steepAtPercent: isStronger ? steeped : null },
  }
}
