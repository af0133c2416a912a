import { expect, it } from 'vitest'
import { talker } from './told.ts'

/** As makers would say it; none of these stands in the corpus. */
it.each([
  [
    '8 oranges in a litre of 60% and 500 g damsons in 70 cl gin',
    ['/plan of:8 oranges spirit:1 litre 60%', '/plan of:500 g damsons spirit:70 cl gin 40%'],
  ],
  [
    'shopping list for 150 g ginger in 50 cl vodka and 12 limes in 1 l 95%',
    ['/plan of:150 g ginger spirit:50 cl vodka 40%', '/plan of:12 limes spirit:1 l 95%'],
  ],
  [
    '8 arance in 1 l di alcol 95% e 400 g lamponi in mezzo litro di vodka',
    ['/plan of:8 arance spirit:1 l 95%', '/plan of:400 g lamponi spirit:0.5 litro vodka 40%'],
  ],
])('%s is two drinks', async (text, choices) => {
  expect(await talker().say(text)).toMatchObject({ code: 'question', choices })
})

it.each([
  ['8 oranges and 3 lemons in a litre of 60%', '/plan of:8 oranges + 3 lemons spirit:1 litre 60%'],
  ['8 oranges in 500 ml 95% and 500 ml vodka', '/plan of:8 oranges spirit:500 ml 95% + 500 ml vodka 40%'],
])('%s is one', async (text, read) => {
  expect(await talker().say(text)).toMatchObject({ code: null, read })
})
