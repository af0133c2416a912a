import { expect, test } from 'vitest'
import {
  BLOOD_KG_PER_L,
  DANGEROUS_GLASS_G,
  glassDanger,
  HEAVY_OCCASION_G,
  LIFE_THREATENING_G_PER_L,
  LIGHT_ADULT_KG,
  WIDMARK_SHARE,
} from '../../../core/label/one-glass.ts'
import published from '../../published/for-guests.json' with { type: 'json' }

test.each([
  [0, null],
  [59.999, null],
  [60, 'heavy'],
  [79.999, 'heavy'],
  [80, 'dangerous'],
  [1000, 'dangerous'],
])('%d g of alcohol in one glass: %s', (grams, danger) => {
  expect(glassDanger(grams)).toBe(danger)
})

test('heavy drinking on an occasion is 60 g or more (World Health Organization, from memory)', () => {
  expect(HEAVY_OCCASION_G).toBe(published.thresholds.find(({ what }) => what.startsWith('heavy'))!.least)
})

test('the dangerous glass is what brings a light adult to 0.31 % by the formula of Widmark, and no more', () => {
  // g = share × mass × g/kg of blood; both figures from memory.
  const grams = (WIDMARK_SHARE * LIGHT_ADULT_KG * LIFE_THREATENING_G_PER_L) / BLOOD_KG_PER_L
  expect(grams).toBeCloseTo(80.8, 1)
  expect(DANGEROUS_GLASS_G).toBeLessThanOrEqual(grams)
  expect(DANGEROUS_GLASS_G).toBeGreaterThan(0.95 * grams)
})
