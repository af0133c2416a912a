import { expect, test } from 'vitest'
import { asInvertSugarGPerL } from '../../../core/liquid/invert-sugar.ts'

test('95 g of sucrose are 100 g of invert sugar (molar masses, factor 1.0526, within 0.1)', () => {
  expect(Math.abs(asInvertSugarGPerL(95) - 100)).toBeLessThanOrEqual(0.1)
  expect(Math.abs(asInvertSugarGPerL(1) - 1.0526)).toBeLessThanOrEqual(0.00005)
})
