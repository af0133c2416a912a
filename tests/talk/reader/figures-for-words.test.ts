import { expect, it } from 'vitest'
import { writtenOut } from '../../../bot/talk/lexicon/texted.ts'
import { talker } from './told.ts'

it.each([
  ['2 sweet 4 me', 'too sweet for me'],
  ['is it 2 late 4 xmas', 'is it too late for xmas'],
  ['2 sweet oranges and 4 lemons', '2 sweet oranges and 4 lemons'],
  ['1.2 strong, 1/4 the sugar', '1.2 strong, 1/4 the sugar'],
  ['10 lemons, 2 l of 95', '10 lemons, 2 l of 95'],
])('%s: %s', (typed, meant) => {
  expect(writtenOut(typed)).toBe(meant)
})

it('makes a plan less sweet for whom it is 2 sweet', async () => {
  const one = talker()
  await one.say('/plan of:10 lemons spirit:1 l 95%')
  expect((await one.say('2 sweet 4 us')).read).toMatch(/^\/plan of:10 lemons spirit:1 l 95% to-sweetness:1\d0 g\/L$/)
})
