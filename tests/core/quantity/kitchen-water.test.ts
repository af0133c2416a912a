import { expect, it } from 'vitest'
import { kitchenWater } from '../../../core/quantity/write/made-amounts.ts'
import { writeWaters } from '../../../core/quantity/write/write-quantity.ts'
import { kitchenRounded } from '../../../core/recipe/tool-precision.ts'

it('writes every amount of water that a kitchen is told, from 10 ml to 20 l', () => {
  const written = Array.from({ length: 2000 }, (_, at) => {
    const waterMl = kitchenRounded(10 * (at + 1))
    return [waterMl.value, writeWaters(kitchenWater(waterMl, null, 'metric'))] as const
  })
  for (const [waterMl, text] of written)
    expect(text).toBe(waterMl < 1000 ? `${waterMl} ml` : `${Number((waterMl / 1000).toFixed(3))} l`)
})
