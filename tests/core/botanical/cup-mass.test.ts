import { expect, it } from 'vitest'
import { readPlants } from '../../../core/recipe/plan/find-plants.ts'
import { refusal } from '../quantity/refusal.ts'

const massOf = (text: string) => {
  const [plant] = readPlants(text).plants
  return plant?.massG ?? null
}

// Household weights of USDA's food tables (SR, release 28), g a US cup, from memory: raspberries (NDB 09302) 123, blackberries (09042)
// 144, blueberries (09050) 148, sweet cherries with pits (09070) 138.
it.each([
  ['1 cup raspberries', 123],
  ['2 cups of raspberries', 246],
  ['a cup of blackberries', 144],
  ['2 tazze di lamponi', 246],
  ['half a cup of blueberries', 74],
  ['1 cup sweet cherries', 138],
])('%s', (text, grams) => {
  const mass = massOf(text)
  expect(mass?.value).toBeCloseTo(grams, 0)
  expect(mass!.plusMinus / mass!.value).toBeGreaterThanOrEqual(0.2)
})

it.each(['1 cup sloes', 'a cup of lemon balm'])('asks what it weighs where no table says so: %s', (text) => {
  expect(refusal(() => readPlants(text))).toBe('bad_value piece_not_weighed')
})

it.each(['10 blackberries', '3 cranberries'])('counts no fruit in cups where none was said: %s', (text) => {
  expect(refusal(() => readPlants(text))).toBe('bad_value piece_not_weighed')
})
