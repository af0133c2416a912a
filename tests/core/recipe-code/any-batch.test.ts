import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DomainError } from '../../../core/domain-error.ts'
import { decodeBatch, encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import type { Recipe } from '../../../core/recipe/code/recipe.ts'
import { runs, SEED } from '../../runs.ts'
import { refusal } from '../quantity/refusal.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { expectConserved, made } from './making.ts'
import { LEMON, usualRecipe } from './recipes.ts'

describe('a code with too much of a plant', () => {
  it('is refused by the ceiling, like a line typed', () => {
    const nutmeg = { ...LEMON, plants: [{ ...LEMON.plants[0]!, id: 'nutmeg', massMg: 100_000, countTenths: null }] }
    expect(refusal(() => made(decodeBatch(encodeBatch(nutmeg))))).toBe('over_ceiling over_ceiling')
  })
})

describe('any batch', () => {
  it('plans alike before and after its code', () => {
    let planned = 0
    const outcome = (recipe: Recipe) => {
      try {
        const { plan } = made(recipe)
        planned++
        return plan
      } catch (error) {
        if (error instanceof DomainError && error.code !== 'internal') return error.problem
        throw error
      }
    }
    const numRuns = runs(40, 3000)
    fc.assert(
      fc.property(usualRecipe, (recipe) => {
        expect(outcome(decodeBatch(encodeBatch(recipe)))).toEqual(outcome(recipe))
      }),
      { seed: SEED, numRuns },
    )
    expect(planned).toBeGreaterThan(numRuns)
  })

  it('is the same drink from any spirit that reaches it, and keeps every gram', () => {
    let planned = 0
    const numRuns = runs(40, 3000)
    const given = fc.record({
      recipe: usualRecipe,
      ml: fc.double({ min: 50, max: 5000, noNaN: true }),
      percent: fc.double({ min: 38, max: 96, noNaN: true }),
    })
    fc.assert(
      fc.property(given, ({ recipe, ml, percent }) => {
        try {
          const friend = made(recipe, { spirits: [spirit(ml, percent)] })
          planned++
          expectConserved(friend)
          friend.plan.plants.forEach(({ massG: mass }, index) => {
            expect(mass.value).toBeCloseTo((friend.factor * recipe.plants[index]!.massMg) / 1000, 6)
          })
          if (recipe.targets === null) return
          // Where no sugar is wished the plants’ own stays in it, and a strength just above its own is what there is.
          if (recipe.targets.sugarTenthGPerL === 0) {
            const [is, wished] = [friend.plan.outcome.abvPercent.value, recipe.targets.abvHundredthPercent / 100]
            expect(friend.plan.sugarG.value).toBe(0)
            expect(is / wished).toBeGreaterThan(0.98 - 1e-6)
            expect(is / wished).toBeLessThan(1 + 1e-6)
            return
          }
          expect(friend.plan.outcome.abvPercent.value).toBeCloseTo(recipe.targets.abvHundredthPercent / 100, 6)
          expect(friend.plan.outcome.sugarGPerL.value).toBeCloseTo(recipe.targets.sugarTenthGPerL / 10, 4)
        } catch (error) {
          if (!(error instanceof DomainError) || error.code === 'internal') throw error
        }
      }),
      { seed: SEED, numRuns },
    )
    expect(planned).toBeGreaterThan(numRuns / 3)
  })
})
