import { expect, it } from 'vitest'
import { label } from '../../../core/label/label.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'

const litre = { by: 'volume', atC: 20, abvAtC: 20, amount: exactly(1000), abvPercent: exactly(30) } as const
const invertOf = (material: Parameters<typeof label>[3]) =>
  label({ ...litre, sugarGPerL: exactly(200) }, null, ['eu'], material).invertGPerL.value

// Sucrose takes up water, 342.3 g becoming 360.31 g; invert syrup and honey have done so already (honey has 1 to 2 % sucrose).
it('counts only sucrose as more than it weighs when it is told as invert sugar', () => {
  expect(invertOf('white_sugar')).toBeCloseTo((200 * 360.31) / 342.3, 6)
  expect(invertOf('honey')).toBeGreaterThanOrEqual(200)
  expect(invertOf('honey')).toBeLessThan(201)
})
