import { isDriedForm } from '../jar/entry/start-from-plan.ts'
import { abvPercent, sugarGPerL, volumeMl } from '../liquid/liquid.ts'
import { fillBottles } from '../recipe/plan/fill-bottles.ts'
import type { Bottles } from '../recipe/plan/parse-bottles.ts'
import type { Plan } from '../recipe/plan/plan.ts'
import { liquidOf, type NamedPortion } from '../recipe/portion.ts'
import { valuesOf } from '../recipe/propagate.ts'
import { joinSweetenings, type Sweetening } from '../recipe/sweetening.ts'
import { type Needs, plantNeed, type SpiritNeed, type SweetenerNeed, type VesselNeed } from './needs.ts'

/** Spirits as they are poured, brought to 20 °C. */
export const spiritNeeds = (spirits: readonly NamedPortion[]): readonly SpiritNeed[] =>
  spirits.map(({ drink = null, ...portion }) => {
    const liquid = liquidOf(valuesOf(portion))
    return {
      volumeMl: volumeMl(liquid),
      abvPercent: abvPercent(liquid),
      sugarGPerL: sugarGPerL(liquid),
      drink,
    }
  })

/** Each material once, and nothing of which there is none. */
export const sweetenerNeeds = (sweetenings: readonly Sweetening[]): readonly SweetenerNeed[] =>
  joinSweetenings(sweetenings)
    .map(({ material, massG }) => ({ material, massG: massG.value }))
    .filter(({ massG }) => massG > 0)

/** What is left over and no more than this share of a bottle is no reason for another. Judgement. */
const NO_BOTTLE_SHARE = 0.1

/** Bottles of a size without a count: as many as it takes, the last perhaps not full. */
export function bottlesNeeded(
  batchMl: number,
  bottles: readonly Pick<Bottles, 'count' | 'volumeMl'>[],
): readonly VesselNeed[] {
  const { bottles: filled, leftoverMl } = fillBottles(batchMl, bottles)
  const lastOpen = bottles.findLastIndex(({ count }) => count === null)
  return bottles
    .map(({ count, volumeMl: sizeMl }, at) => {
      const isOneMore = at === lastOpen && leftoverMl > NO_BOTTLE_SHARE * sizeMl
      return { count: count ?? filled[at]!.count + Number(isOneMore), volumeMl: sizeMl }
    })
    .filter(({ count }) => count > 0)
}

/** All that a plan takes from the first day to the last. */
export function needsOfPlan(plan: Plan, bottles: readonly Pick<Bottles, 'count' | 'volumeMl'>[]): Needs {
  const { steeping, plants, unknown, sweetener, sugarG, filler, waterG, steep, outcome } = plan
  return {
    plants: [
      ...plants.map(({ botanical, massG, count }) =>
        plantNeed({
          id: botanical.id,
          name: botanical.names.title,
          isDried: isDriedForm(botanical),
          massG: massG.value,
          count,
        }),
      ),
      ...unknown.map(({ name, massG }) =>
        plantNeed({ id: null, name, isDried: false, massG: massG.value, count: null }),
      ),
    ],
    spirits: spiritNeeds(steeping.spirits),
    sweeteners: sweetenerNeeds([
      ...steeping.sweetenings,
      { material: sweetener, massG: sugarG },
      ...(filler === null ? [] : [{ material: filler, massG: waterG }]),
    ]),
    bottles: bottlesNeeded(outcome.volumeMl.value, bottles),
    jars: [{ count: 1, volumeMl: steep.jarMl }],
    isToStrain: true,
    isToFilter: true,
  }
}
