import { expect, it, test } from 'vitest'
import { parseSpirits } from '../../../core/quantity/read/parse-spirits.ts'

const amounts = (text: string): readonly (number | null)[] =>
  parseSpirits(text).map(({ amount }) => (amount.kind === 'volume' ? Math.round(amount.volumeMl) : null))

test.each([
  ['2 x 700 ml vodka 40%', [1400]],
  ['2x700ml vodka 40%', [1400]],
  ['vodka 3 × 0.5 l 40%', [1500]],
  ['2 bottles of 700 ml vodka 40%', [1400]],
  ['2 bottiglie da 70 cl vodka 40%', [1400]],
  ['a litre of gin 40%', [1000]],
  ['1 l vodka 40%', [1000]],
  ['500 ml vodka 40% and 250 ml rum 54%', [500, 250]],
  ['500 ml vodka 40%, 2 x 250 ml rum 54%', [500, 500]],
])('reads how much there is in %s', (text, wanted) => {
  expect(amounts(text)).toEqual(wanted)
})

it('leaves the words of a drink and its strength as they are', () => {
  const [part] = parseSpirits('2 x 700 ml London dry gin 40%')
  expect(part).toMatchObject({ words: 'London dry gin', strength: { abvPercent: 40 } })
})
