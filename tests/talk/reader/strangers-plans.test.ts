import { describe, expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

// As strangers put it; ours, no source.
describe.each([
  ['10 present bottles of 250 ml, plum', '/plan of:plum strength:40% bottles:10 x 250 ml'],
  ['cherry: six bottles at 350 ml', '/plan of:cherry strength:40% bottles:6 x 350 ml'],
  ['6 bottles each 500 ml, quince', '/plan of:quince strength:40% bottles:6 x 500 ml'],
  [
    '8 fancy bottles 6 oz each, lemon, need them march 20',
    '/plan of:lemon strength:95% bottles:8 x 6 fl oz ready-by:march 20',
  ],
  ['3 cups wild raspberries and a 750 of gin', '/plan of:3 cups raspberries spirit:750 ml gin 40%'],
  // A quart is four cups.
  ['a quart of wild strawberries in a fifth of vodka', '/plan of:4 cups strawberries spirit:1 fifth vodka 40%'],
  ['pound ae plums, litre ae gin', '/plan of:1 pound plums spirit:1 litre gin 40%'],
  ['10 nos lemons, 1 litre 95%', '/plan of:10 lemons spirit:1 litre 95%'],
  ['coconut, 150 g desiccated, 700 ml rum', '/plan of:150 g desiccated coconut spirit:700 ml rum 40%'],
  ['figs, 300 g of the dried and 1 l of 60%', '/plan of:300 g dried figs spirit:1 l 60%'],
  ['plums on brandy like my oma, 500 g, 1 litre of 38 %', '/plan of:500 g plums spirit:1 litre brandy 38%'],
  [
    '600 g plums and 1 litre of rum, dinnae make it sickly',
    '/plan of:600 g plums spirit:1 litre rum 40% to-sweetness:dry',
  ],
  [
    '1 kg cherries 1 l vodka, I don’t want it like syrup',
    '/plan of:1 kg cherries spirit:1 l vodka 40% to-sweetness:dry',
  ],
  [
    '1 kg di ciliegie e 1 l di vodka, che non sia stucchevole',
    '/plan of:1 kg ciliegie spirit:1 l vodka 40% to-sweetness:dry',
  ],
  ['a bag of pears, four pounds. Any notion what they’d be good for?', '/plan of:4 pounds pears spirit:3 quarts 40%'],
  ['what could I pick in july', '/botanical month:july'],
  ['cosa ci sarebbe da raccogliere a settembre', '/botanical month:settembre'],
])('“%s”', (text, read) => {
  it(`is read as ${read}`, async () => {
    expect((await talker().say(text)).read).toBe(read)
  })
})

it.each([
  ['once more the raspberry, with 1 litre of gin 40%', '/again raspberry spirit:1 litre gin 40%'],
  [
    'I want the raspberry a second time, this time with a litre of brandy',
    '/again raspberry spirit:1 litre brandy 40%',
  ],
  ['il lampone un’altra volta, stavolta con un litro di vodka', '/again raspberry spirit:1 litro vodka 40%'],
])('makes a batch again with another spirit: %s', async (text, read) => {
  expect((await (await talkerFor({ after: null, shelf: 'fair' })).say(text)).read).toBe(read)
})

it.each([
  ['could you speak metric to me', 'metric'],
  ['I don’t understand cups, use grams', 'metric'],
  ['no cups please, grams', 'metric'],
  ['cups mean nothing to me, I think in grams', 'metric'],
  ['would you mind using ounces', 'us'],
  ['mi dai le misure in grammi? le once non le conosco', 'metric'],
])('takes the measures that somebody wants to be answered in: %s', async (text, units) => {
  expect((await talker().say(text)).read).toBe(`/settings units:${units}`)
})

it.each(['what is an ounce in grams', 'how much is 3 ounces in grams', 'ounces please, could you put it that way?'])(
  'sets nothing by %s',
  async (text) => {
    expect((await talker().say(text)).call?.path).not.toBe('settings')
  },
)

it.each(['I don’t know, it’s too sweet', 'not sure, is it too sweet at 30 % and 300 g/L, 1 litre'])(
  'takes no complaint for a wish: %s',
  async (text) => {
    expect((await talker().say(text)).read ?? '').not.toContain('dry')
  },
)
