import fc from 'fast-check'
import { expect, it } from 'vitest'
import { encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { LEMON, usualRecipe } from '../../core/recipe-code/recipes.ts'
import { runs, SEED } from '../../runs.ts'
import { testDesk } from '../test-desk.ts'

/** 20 November 2026, at noon. */
const nowMs = Date.UTC(2026, 10, 20, 12)

const ADVICE = [
  /This keeps: (?<line>\/plan .+)$/,
  /(?<option>to-strength:[\d.]+%)/,
  /(?<option>to-sweetness:[\d.]+ g\/L)/,
]

it('makes a batch again when any one thing is changed that its refusal names', async () => {
  const desk = testDesk({ nowMs, width: 400 })
  const followed = [0, 0, 0]
  const numRuns = runs(12, 1000)
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
        // An option inside a whole line belongs to that line.
        const text = at === 0 ? error.message : error.message.replace(/\/plan .+$/, '')
        const found = advice.exec(text)?.groups
        if (found === undefined) continue
        followed[at]!++
        const again = found.line ?? `${line(percent)} ${found.option}`
        expect((await desk.jsonOf(again)).error, `${error.message} → ${again}`).toBeUndefined()
      }
    }),
    { seed: SEED, numRuns, examples: [[{ recipe: LEMON, ml: 1000, percent: 36 }]] },
  )
  expect(Math.min(...followed), followed.join(' ')).toBeGreaterThan(0)
})
