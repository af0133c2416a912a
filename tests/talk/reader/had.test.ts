import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const haveOf = async (text: string): Promise<string | undefined> => {
  const { call } = await (await talkerFor({ after: null })).say(text)
  expect(call?.path).toBe('plan')
  return call?.options.have
}

describe('what somebody has is not bought', () => {
  it.each([
    ['I have a handle of vodka and 3 lb of cherries', '3 lb cherries + 1 handle vodka 40%'],
    ['I’ve got 12 lemons and a litre of 95% spirit', '12 lemons + 1 litre 95%'],
    ['there’s a litre of 95% in the cupboard and 10 oranges', '10 oranges + 1 litre 95%'],
    ['10 lemons and a litre of 95% at home', '10 lemons + 1 litre 95%'],
    ['picked 400 g of sloes and I have a litre of gin', '400 g sloes + 1 litre gin 40%'],
    ['ho un litro di alcol a 95 e 10 limoni', '10 limoni + 1 litro 95%'],
    ['in dispensa c’è un litro di grappa, e ho 500 g di prugne', '500 g prugne + 1 litro grappa 40%'],
    [
      'we’ve got 2 kg of quinces, 3 litres of grappa and 1 kg of sugar',
      '2 kg quinces + 3 litres grappa 40% + 1 kg sugar',
    ],
    // What is only wished for is not there.
    ['I have a litre of 95% and want to make limoncello with 10 lemons', '1 litre 95%'],
    ['I have 4 lemons, how much vodka do I need?', '4 lemons'],
  ])('%s', async (text, have) => {
    expect(await haveOf(text)).toBe(have)
  })

  it.each([
    '10 lemons and a litre of 95% spirit',
    'if I had 10 lemons and a litre of vodka',
    'I don’t have vodka, only 1 l of 60% and 8 oranges',
    'non ho vodka, uso 1 l di alcol al 95 e 8 arance',
  ])('%s: nothing is there', async (text) => {
    expect(await haveOf(text)).toBeUndefined()
  })

  it('buys the rest where more is made, and the jar is begun without it', async () => {
    const one = await talkerFor({ after: null })
    await one.say('I have 300 g sloes and a litre of gin')
    expect((await one.say('double')).call?.options).toMatchObject({
      of: '600 g sloes',
      have: '300 g sloes + 1 litre gin 40%',
    })
    expect((await one.say('start it')).call?.options).not.toHaveProperty('have')
  })
})
