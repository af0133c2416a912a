import { expect, it } from 'vitest'
import { englishFormat } from '../../../bot/text/en/format.ts'
import { fillsText } from '../../../bot/text/en/plan.ts'

const fills = (count: number, leftMl: number) =>
  fillsText(
    {
      bottles: [{ count, volumeMl: 500 }],
      volumeMl: { value: count * 500 + leftMl, plusMinus: 1 },
      leftoverMl: { value: leftMl, plusMinus: 1 },
    },
    englishFormat('metric'),
  )

it('calls nothing left over what is less than a teaspoon', () => {
  expect(fills(6, 0.04)).toBe('six 500\u00a0ml bottles')
  expect(fills(6, 12)).toBe('six 500\u00a0ml bottles and 12\u00a0ml over')
  expect(fills(1, 12)).toBe('one 500\u00a0ml bottle and 12\u00a0ml over')
})

it('says how much there is where no bottle is full', () => {
  expect(fills(0, 420)).toBe('about 420\u00a0ml, not quite a bottle')
})
