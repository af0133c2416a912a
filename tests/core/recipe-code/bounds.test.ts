import { expect, it } from 'vitest'
import { decodeBatch, encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { RANGES, type Recipe } from '../../../core/recipe/code/recipe.ts'
import { batchOf } from '../../../core/recipe/code/recipe-batch.ts'
import { recipeWish } from '../../../core/recipe/code/recipe-wish.ts'
import { refusal } from '../quantity/refusal.ts'
import { START, spirit } from '../recipe-plan/wishes.ts'
import { LEMON } from './recipes.ts'

const withSpirits = (count: number, volumeTenthMl = 1): Recipe => ({
  ...LEMON,
  spirits: Array.from({ length: count }, () => ({ volumeTenthMl, abvHundredthPercent: 10 })),
})

it('a code has at most 300 characters', () => {
  // 4096 takes four symbols and 65,536 five, so that each longer spirit takes one more.
  const grown = (longer: number): Recipe => ({
    ...LEMON,
    spirits: [...withSpirits(longer, 65_536).spirits, ...withSpirits(50 - longer, 4096).spirits],
  })
  const { length } = encodeBatch(grown(0))
  const missing = 300 - length
  expect(missing).toBeGreaterThan(0)
  expect(missing).toBeLessThan(50)
  expect(encodeBatch(grown(missing))).toHaveLength(300)
  expect(decodeBatch(encodeBatch(grown(missing)))).toEqual(grown(missing))
  expect(refusal(() => encodeBatch(grown(missing + 1)))).toBe('limit recipe_too_long')
})

it('a text of fewer than sixteen letters is no code, and a longer one a damaged code', () => {
  expect(refusal(() => decodeBatch('1'.repeat(15)))).toBe('bad_value not_a_code')
  expect(refusal(() => decodeBatch('1'.repeat(16)))).toBe('bad_value code_damaged')
})

// A cubic metre, and twenty years of 365.25 days: the most that can be typed.
it.each<[keyof typeof RANGES, number]>([
  ['volumeTenthMl', 10_000_000],
  ['waterTenthG', 10_000_000],
  ['sugarTenthG', 10_000_000],
  ['days', 7305],
  ['addOnDays', 7305],
])('%s go up to %i', (name, most) => {
  expect(RANGES[name][1]).toBe(most)
})

it('a code of more than a cubic metre is damaged', () => {
  const watered = (waterTenthG: number): Recipe => ({ ...LEMON, waterTenthG })
  expect(decodeBatch(encodeBatch(watered(10_000_000)))).toEqual(watered(10_000_000))
  expect(refusal(() => decodeBatch(encodeBatch(watered(10_000_001))))).toBe('bad_value code_damaged')
})

// Common practice, no source: a spirit within 1 % vol of the recipe's is as good as it.
it.each([
  [60, null],
  [60.99, null],
  [61.01, 60],
  [70, 60],
])('in place of a spirit of 60 %% one of %s %% vol is diluted to %s', (percent, dilutedTo) => {
  const own: Recipe = { ...LEMON, spirits: [{ volumeTenthMl: 10_000, abvHundredthPercent: 6000 }] }
  const { steepAtPercent } = recipeWish(batchOf(own), 1, [spirit(1000, percent)], {
    named: { abvPercent: undefined, sugarGPerL: undefined },
    bottles: [{ count: null, volumeMl: 500 }],
    start: START,
    readyBy: null,
    steepAtPercent: null,
  })
  if (dilutedTo === null) expect(steepAtPercent).toBeNull()
  else expect(steepAtPercent).toBeCloseTo(dilutedTo, 6)
})

it('makes no code of more spirits than it would read', () => {
  expect(decodeBatch(encodeBatch(withSpirits(64)))).toEqual(withSpirits(64))
  expect(refusal(() => encodeBatch(withSpirits(65)))).toBe('limit recipe_too_long')
})
