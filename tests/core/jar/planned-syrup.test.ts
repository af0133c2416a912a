import { expect, it } from 'vitest'
import { distanceFromPlanned } from '../../../core/jar/state/planned-syrup.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'

const poured = (waterG: number, sugarG: number) => ({ waterG: exactly(waterG), sugarG: exactly(sugarG) })
const PLANNED = poured(600, 300)

// Common practice, no source: a third of the planned amount is another syrup, twice or half of it a slip.
it.each([
  [600, 300, 'near'],
  [800, 300, 'near'],
  [800.1, 300, 'far'],
  [400, 300, 'near'],
  [399.9, 300, 'far'],
  [600, 200, 'near'],
  [600, 199.9, 'far'],
  [1200, 300, 'far'],
  [1200.1, 300, 'far_off'],
  [600, 600.1, 'far_off'],
  [300, 300, 'far'],
  [299.9, 300, 'far_off'],
  [600, 150, 'far'],
  [600, 149.9, 'far_off'],
] as const)(
  'of %s g of water and %s g of sugar, where 600 and 300 were planned, says %s',
  (waterG, sugarG, distance) => {
    expect(distanceFromPlanned(poured(waterG, sugarG), PLANNED)).toBe(distance)
  },
)

it('of what was to be none, any is far off', () => {
  expect(distanceFromPlanned(poured(0, 300), poured(0, 300))).toBe('near')
  expect(distanceFromPlanned(poured(1, 300), poured(0, 300))).toBe('far_off')
})
