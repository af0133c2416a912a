import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const said = async (text: string) => (await talkerFor({ after: null })).say(text)

// A bottle of spirit is one of 700 ml everywhere in talk: common practice in Europe.
it.each([
  [
    'sugar is 1.20 a kilo, lemons 4/kg, vodka 15 a bottle',
    '/cost prices:sugar 1.20/kilo + lemons 4/kg + vodka 15/700 ml',
  ],
  ['sugar is 1.20/kg', '/cost prices:sugar 1.20/kg'],
  ['vodka costs 15 a bottle', '/cost prices:vodka 15/700 ml'],
  ['vodka £15 a 70cl bottle', '/cost prices:vodka £15/70cl'],
  ['I paid 15 for a bottle of vodka', '/cost prices:vodka 15/700 ml'],
  ['empty bottles 0.80 each', '/cost prices:empty bottles 0.80 each'],
  ['lo zucchero costa 1,20 al chilo', '/cost prices:zucchero 1,20/chilo'],
  [
    'lo zucchero costa 1,20 al chilo, i limoni 4 al kg, la vodka 15 a bottiglia',
    '/cost prices:zucchero 1,20/chilo + limoni 4/kg + vodka 15/700 ml',
  ],
])('%s', async (text, read) => {
  expect(await said(text)).toMatchObject({ read, code: null })
})

it.each(['10 lemons and a bottle of vodka', 'how many lemons for a bottle of vodka?'])(
  'is no price: %s',
  async (text) => {
    expect((await said(text)).command).not.toBe('cost')
  },
)
