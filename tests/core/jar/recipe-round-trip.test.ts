import fc from 'fast-check'
import { expect, it, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { startedFrom } from '../../../core/jar/entry/start-from-plan.ts'
import { recipeOf } from '../../../core/jar/state/recipe-of.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { decodeBatch, encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { planRecipe } from '../../../core/recipe/code/plan-recipe.ts'
import { batchOf } from '../../../core/recipe/code/recipe-batch.ts'
import { type Plan, plan } from '../../../core/recipe/plan/plan.ts'
import type { PlanWish } from '../../../core/recipe/plan/plan-wish.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import { spirit, wish } from '../recipe-plan/wishes.ts'
import { on, storyFrom } from './jars.ts'

const [year = 0, month = 0, day = 0] = on(0).day.split('-').map(Number)
const start = { year, month, day }

/** A plan, and the plan of the code of the jar that it begins. */
function bothOf(wished: PlanWish): readonly [Plan, Plan] {
  const typed = plan(wished)
  const code = encodeBatch(recipeOf(storyFrom(startedFrom(typed, wished, 'lemon'))))
  expect(code.length).toBeLessThan(300)
  const { bottles } = wished
  const nothing = { spirits: null, spiritAbvPercent: null, plants: [] }
  const named = { abvPercent: undefined, sugarGPerL: undefined }
  const asked = { named, bottles, start, readyBy: null, steepAtPercent: null }
  return [typed, planRecipe(batchOf(decodeBatch(code)), nothing, asked).plan]
}

/** False where it is refused: then there is no jar. */
function isPlanned(wished: PlanWish): boolean {
  try {
    plan(wished)
    return true
  } catch (error) {
    if (error instanceof DomainError && error.code !== 'internal') return false
    throw error
  }
}

/** Within what the digits of a code leave: a milligram, a tenth of a millilitre, a hundredth of a per cent. */
function expectAlike([typed, read]: readonly [Plan, Plan]): void {
  expect(read.plants.map(({ botanical }) => botanical)).toEqual(typed.plants.map(({ botanical }) => botanical))
  read.plants.forEach(({ massG }, index) => {
    expect(Math.abs(massG.value - typed.plants[index]!.massG.value)).toBeLessThanOrEqual(0.001 + 1e-9)
  })
  expect(Math.abs(read.spiritMl.value - typed.spiritMl.value)).toBeLessThanOrEqual(
    0.1 * typed.steeping.spirits.length + 1e-9,
  )
  expect(Math.abs(read.targets.abvPercent - typed.targets.abvPercent)).toBeLessThanOrEqual(0.01 + 1e-9)
  expect(Math.abs(read.targets.sugarGPerL - typed.targets.sugarGPerL)).toBeLessThanOrEqual(0.1 + 1e-9)
  const volumeMl = typed.outcome.volumeMl.value
  expect(Math.abs(read.outcome.volumeMl.value / volumeMl - 1)).toBeLessThan(2e-3)
  expect(read.schedule).toEqual(typed.schedule)
}

test.each(catalogue.map(({ id, spiritPercent }) => [id, spiritPercent.max]))(
  '%s at its typical dose comes out of its code as it was',
  (id, percent) => {
    const bottles = [{ count: null, volumeMl: 500, size: null }]
    expectAlike(bothOf(wish([{ id }], { spirits: [spirit(1000, percent)], bottles, start })))
  },
)

it('so does any batch of the catalogue', () => {
  let made = 0
  const numRuns = runs(10, 400)
  const given = fc.record({
    ids: fc.uniqueArray(fc.constantFrom(...catalogue.map(({ id }) => id)), { minLength: 1, maxLength: 8 }),
    spirits: fc.array(fc.tuple(fc.double({ min: 100, max: 2000, noNaN: true }), fc.integer({ min: 40, max: 96 })), {
      minLength: 1,
      maxLength: 3,
    }),
    steepAtPercent: fc.option(fc.integer({ min: 40, max: 60 }), { freq: 2 }),
    sugarG: fc.oneof(fc.constant(0), fc.double({ min: 1, max: 200, noNaN: true })),
  })
  fc.assert(
    fc.property(given, ({ ids, spirits, steepAtPercent, sugarG }) => {
      const plants = ids.map((id) => ({ id }))
      const bottles = [{ count: null, volumeMl: 500, size: null }]
      const poured = spirits.map(([ml, percent]) => spirit(ml, percent))
      const wished = wish(plants, {
        spirits: poured,
        steepAtPercent,
        sweetenings: whiteSugar(exactly(sugarG)),
        bottles,
        start,
      })
      if (!isPlanned(wished)) return
      expectAlike(bothOf(wished))
      made++
    }),
    { seed: SEED, numRuns },
  )
  expect(made).toBeGreaterThan(numRuns / 4)
})
