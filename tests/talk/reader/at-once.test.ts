import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const said = (text: string) => talkerFor({ after: null, shelf: 'lemon_strained' }).then((one) => one.say(text))

it.each([
  ['80 g coffee beans and 1 vanilla pod in 1 l vodka, everything in at once', 'vodka'],
  ['80 g di caffè in grani e 1 bacca di vaniglia in 1 l di vodka, tutto in una volta', 'vodka'],
])('plans all of it from the first day: %s', async (text, spirit) => {
  const { command, call } = await said(text)
  expect(command).toBe('plan')
  expect(call?.options).toMatchObject({ 'all-in': 'yes', spirit: expect.stringContaining(spirit) })
})

it.each([
  'can I do a second go with the lemon peels in 500 ml vodka?',
  'should I put 200 g sugar on the strained lemon peels?',
  'I didn’t put sugar on the fruit of the lemon',
  'perhaps I put 500 g plums in a litre of vodka',
  'if last sunday I had put 600 g plums in a litre of vodka',
  'my sister put 600 g of plums in a litre of vodka last sunday',
  'mia zia ha messo 600 g di prugne in un litro di vodka',
  'nothing to put in my litre of gin, damsons perhaps',
  'niente da mettere in un litro di grappa, forse le pere',
])('records nothing of what is asked or denied: %s', async (text) => {
  expect((await said(text)).recorded).toBe(0)
})

it('starts what was put in, also where an amount was only about so much', async () => {
  const { read, recorded } = await said('put maybe 500 g plums in a litre of vodka yesterday')
  expect(read).toBe('/jar start of:500 g plums spirit:1 litre vodka 40% when:yesterday')
  expect(recorded).toBe(1)
})
