import { expect } from 'vitest'
import { ethanolG, massG } from '../../../core/liquid/liquid.ts'
import { type AtHand, planRecipe } from '../../../core/recipe/code/plan-recipe.ts'
import type { Recipe } from '../../../core/recipe/code/recipe.ts'
import { batchOf } from '../../../core/recipe/code/recipe-batch.ts'
import type { SaidOfBatch } from '../../../core/recipe/code/recipe-wish.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { inputsOf, steepLiquids } from '../../../core/recipe/steep.ts'
import { START } from '../recipe-plan/wishes.ts'

const ASKED: SaidOfBatch = {
  named: { abvPercent: undefined, sugarGPerL: undefined },
  bottles: [{ count: null, volumeMl: 500 }],
  start: START,
  readyBy: null,
  steepAtPercent: null,
}
const NOTHING: AtHand = { spirits: null, spiritAbvPercent: null, plants: [] }
export const bottles = (count: number) => [{ count, volumeMl: 500, size: null }]

export const made = (recipe: Recipe, atHand: Partial<AtHand> = {}, asked: Partial<SaidOfBatch> = {}) =>
  planRecipe(batchOf(recipe), { ...NOTHING, ...atHand }, { ...ASKED, ...asked })

/** What has to hold of any plan: nothing lost between jar, syrup and bottle. */
export function expectConserved({ plan }: ReturnType<typeof made>): void {
  const { infusion } = steepLiquids(valuesOf(inputsOf(plan.steeping)))
  const out = plan.outcome.liquid
  expect(ethanolG(out) / ethanolG(infusion)).toBeCloseTo(1, 9)
  expect(massG(out)).toBeCloseTo(massG(infusion) + plan.waterG.value + plan.sugarG.value, 6)
}
