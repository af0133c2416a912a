import { expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { amountsScaled, scaledBy, scaledFrom } from '../../../bot/text/en/scaled.ts'

const format = en.format('metric')

// A jug tells 2 % of it. Common practice, no source.
it.each([
  [1, 'about the same amounts as lemon'],
  [1.02, 'about the same amounts as lemon'],
  [0.98, 'about the same amounts as lemon'],
  [1.05, '1.05 times the amounts of lemon'],
  [0.92, '92 % of the amounts of lemon'],
  [0.5, 'half the amounts of lemon'],
  [2, 'twice the amounts of lemon'],
  [2.53, '2.5 times the amounts of lemon'],
  [0.004, '0.4 % of the amounts of lemon'],
])('%d times: %s', (factor, said) => {
  expect(amountsScaled(factor, 'lemon', format).replaceAll('\u00a0', ' ')).toBe(said)
})

it('says what there was least of', () => {
  expect(scaledBy({ by: 'plant', id: 'lemon_peel' })).toBe('to use up your lemon peel')
  expect(scaledBy({ by: 'bottles', id: null })).toBe('to fill your bottles')
  expect(scaledBy({ by: 'spirit', id: null })).toBe('scaled to your spirit so it tastes as strong')
})

it.each([
  [1.02, 'spirit', null, 'Scaled to your spirit: about the same as lemon.'],
  [0.5, 'spirit', null, 'Scaled to your spirit: half of lemon.'],
  [0.92, 'bottles', null, 'To fill your bottles: 92 % of lemon.'],
  [2, 'plant', 'lemon_peel', 'To use up your lemon peel: twice lemon.'],
  [2.53, 'plant', null, 'To use up your plants: 2.5 times lemon.'],
] as const)('%d times, by %s: in one short line', (factor, by, id, said) => {
  expect(scaledFrom({ factor, by, id }, 'lemon', format).replaceAll('\u00a0', ' ')).toBe(said)
})
