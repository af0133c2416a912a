import { expect, it } from 'vitest'
import { englishFormat } from '../../../bot/text/en/format.ts'
import { planSentences } from '../../../bot/text/en/plan.ts'

it('calls nothing left over what is less than a teaspoon', () => {
  const left = (value: number) =>
    planSentences.cells.plan_bottles(
      { bottles: [{ count: 6, volumeMl: 500 }], leftoverMl: { value, plusMinus: 1 } },
      englishFormat('metric'),
    )
  expect(left(0.04)).toBe('6 bottles of 500\u00a0ml, nothing left over')
  expect(left(12)).toBe('6 bottles of 500\u00a0ml, 12\u00a0ml left over')
})
