import { expect, test } from 'vitest'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import usda from './usda.json' with { type: 'json' }

const rows = usda.rows as unknown as readonly (readonly [string, string, number, number | null])[]

test.each(rows)(`%s holds the water and sugars of NDB %s (${usda.source})`, (id, ndb, waterPercent, sugarsPercent) => {
  const { waterFraction, sugarsFraction } = botanicalById(id)
  expect(waterFraction.ndb).toBe(ndb)
  expect(waterFraction.trust).toBe('published')
  expect(Math.abs(waterFraction.value - waterPercent / 100)).toBeLessThanOrEqual(usda.tolerance / 2)
  if (sugarsPercent !== null) {
    expect(sugarsFraction?.ndb).toBe(ndb)
    expect(Math.abs((sugarsFraction?.value ?? 0) - sugarsPercent / 100)).toBeLessThanOrEqual(usda.tolerance / 2)
  }
})

// Check case 23 of the reference: lemon peel 81.6, orange 72.5, basil 92.06, ginger 78.89, strawberry 90.95 g/100 g.
test.each([
  ['lemon_peel', 81.6],
  ['orange_peel', 72.5],
  ['basil', 92.06],
  ['ginger', 78.89],
  ['strawberry', 90.95],
])('%s is %f %% water (check case 23)', (id, waterPercent) => {
  expect(botanicalById(id).waterFraction.value * 100).toBeCloseTo(waterPercent, 9)
})
