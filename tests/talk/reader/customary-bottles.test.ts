import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

/** Wine and magnums by Directive 2007/45/EC, all others by common practice, no source. */
it.each([
  ['10 lemons and two wine bottles of vodka', '2 x 750 ml vodka 40%'],
  ['three jam jars of vodka and 500 g raspberries', '3 x 370 ml vodka 40%'],
  ['a demijohn of vodka and 5 kg plums', '4.5 l vodka 40%'],
  ['a magnum of gin, 1 kg sloes', '1.5 l gin 40%'],
  ['half a dozen beer bottles of grappa, 2 kg quinces', '6 x 500 ml grappa 40%'],
  ['due bottiglie da vino di grappa e 1 kg di prugne', '2 x 750 ml grappa 40%'],
  ['a kilner jar of brandy and 1 kg plums', '1 l brandy 40%'],
])('%s is planned with what they hold', async (said, spirit) => {
  const one = await talkerFor({ after: null })
  expect((await one.say(said)).call).toMatchObject({ path: 'plan', options: { spirit } })
})

it('counts bottles that are filled', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_sweetened' })
  expect((await one.say('bottled the lemon, 3 wine bottles')).call?.options).toMatchObject({ bottles: '3 x 750 ml' })
})

it('takes no jar for spirit that steeps in it', async () => {
  const one = await talkerFor({ after: null })
  expect((await one.say('10 lemons and a litre of 95% in a kilner jar')).call?.options.spirit).toBe('1 litre 95%')
})
