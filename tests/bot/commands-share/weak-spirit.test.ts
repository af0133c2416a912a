import fc from 'fast-check'
import { expect, it } from 'vitest'
import { encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { LEMON, usualRecipe } from '../../core/recipe-code/recipes.ts'
import { runs, SEED } from '../../runs.ts'
import { testDesk } from '../test-desk.ts'

/** 20 November 2026, at noon. */
const nowMs = Date.UTC(2026, 10, 20, 12)

const ADVICE = [/This keeps: (?<line>\/plan .+)$/, /This works: (?<line>\/plan .+)$/]

it('makes a batch again by the line that its refusal offers', async () => {
  const desk = testDesk({ nowMs, width: 400 })
  const followed = [0, 0]
  const numRuns = runs(15, 1000)
  const friends = fc.record({
    recipe: usualRecipe,
    ml: fc.integer({ min: 100, max: 3000 }),
    percent: fc.integer({ min: 10, max: 40 }),
  })
  await fc.assert(
    fc.asyncProperty(friends, async ({ recipe, ml, percent }) => {
      const line = (abvPercent: number) => `/plan from:${encodeBatch(recipe)} spirit:${ml} ml ${abvPercent}%`
      const { error } = await desk.jsonOf(line(percent))
      // Of other refusals, the ceilings' and what does not dissolve, there are tests elsewhere.
      if (error?.code !== 'unreachable') return
      for (const [at, advice] of ADVICE.entries()) {
        const again = advice.exec(error.message)?.groups?.line
        if (again === undefined) continue
        followed[at]!++
        expect((await desk.jsonOf(again)).error, `${error.message} → ${again}`).toBeUndefined()
      }
    }),
    { seed: SEED, numRuns, examples: [[{ recipe: LEMON, ml: 1000, percent: 36 }]] },
  )
  expect(Math.min(...followed), followed.join(' ')).toBeGreaterThan(0)
})
