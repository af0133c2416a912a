import { expect, test } from 'vitest'
import { massFromWeightInAirG, weightInAirFromMassG } from '../../../../core/liquid/measure/weight-in-air.ts'

test('1 kg of water weighs 998.95 g in air (OIML R 22, table XII: 1.2 and 8000 kg/m³)', () => {
  expect(weightInAirFromMassG(1000, 0.9982)).toBeCloseTo(998.95, 2)
})

test.each([0.79, 0.95, 1, 1.3])('mass → weight → mass comes back at %d g/mL', (densityGPerMl) => {
  expect(massFromWeightInAirG(weightInAirFromMassG(750, densityGPerMl), densityGPerMl)).toBeCloseTo(750, 9)
})

test('what is as dense as the weights weighs its mass', () => {
  expect(massFromWeightInAirG(100, 8)).toBeCloseTo(100, 12)
})
