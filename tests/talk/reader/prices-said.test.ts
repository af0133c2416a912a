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
  // In words, by the names of notes, and with the price first.
  ['sugar is two euros a kilo', '/cost prices:sugar 2 euros/kilo'],
  ['rum is a tenner a bottle and the sugar a quid a kilo', '/cost prices:rum £10/700 ml + sugar 1 quid/kilo'],
  ['limes were 30p each, 18 quid a litre for the rum', '/cost prices:limes 30p each + rum 18 quid/litre'],
  ['gin’s fifteen quid a bottle', '/cost prices:gin 15 quid/700 ml'],
  ['the spirit went up to 24 quid a litre', '/cost prices:spirit 24 quid/litre'],
  ['le arance costano cinquanta centesimi l’una', '/cost prices:arance 50 centesimi/una'],
  ['una bottiglia di vodka a dodici euro', '/cost prices:vodka 12 euro/700 ml'],
  [
    'what would it come to: 8 oranges at 50p each, spirit 20 quid a litre',
    '/cost prices:oranges 50p each + spirit 20 quid/litre',
  ],
  [
    'how much would it cost, 8 oranges at 50p, a litre of 95 at 20 euros',
    '/cost prices:oranges 50p each + spirit 95% 20 euros/litre',
  ],
  // A bottle by its size alone, as shops in the United States call it.
  ['151 was $28 a 750', '/cost prices:spirit 151 proof $28/750 ml'],
  ['rum is $19 a 1.75', '/cost prices:rum $19/1.75 l'],
  ['gin’s $17 a liter', '/cost prices:gin $17/liter'],
  ['brandy is $12 per 375 and the figs are $6 a pound', '/cost prices:brandy $12/375 ml + figs $6/pound'],
  ['the 100 proof vodka is $21 a 750', '/cost prices:100 proof vodka $21/750 ml'],
  ['190 proof costs $36 a handle', '/cost prices:spirit 190 proof $36/handle'],
])('%s', async (text, read) => {
  expect(await said(text)).toMatchObject({ read, code: null })
})

it('asks about a price of which it is not told what it is of', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
  expect(await one.say('what did it cost at a fiver a bottle')).toMatchObject({ code: 'question', recorded: 0 })
})

it.each(['10 lemons and a bottle of vodka', 'how many lemons for a bottle of vodka?'])(
  'is no price: %s',
  async (text) => {
    expect((await said(text)).command).not.toBe('cost')
  },
)

it('asks for how much of it, with the size that was said', async () => {
  const one = await talkerFor({ after: null })
  const { outcome } = await one.hear('/cost prices:rum $19/1.75')
  expect(outcome).toMatchObject({ error: { problem: 'price_per_what', values: { example: 'rum $19/1.75 l' } } })
})
