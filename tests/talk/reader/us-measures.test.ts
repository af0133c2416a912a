import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

/** As makers with cups, ounces and proof would say it, and their metric cousins; none of these stands in the corpus. */
describe.each([
  // What stands on the label: US proof is twice the percent by volume (27 CFR 5.1).
  ['9 grapefruit, 1 pint of 151-proof grain spirit', '/plan of:9 grapefruit spirit:1 pint 151 proof'],
  ['a quart of 190 and 14 limes', '/plan of:14 limes spirit:1 quart 190 proof'],
  ['190 grain alcohol, a gallon, 40 lemons', '/plan of:40 lemons spirit:1 gallon 190 proof'],
  ['6 oranges, a fifth of 151', '/plan of:6 oranges spirit:1 fifth 151 proof'],
  ['3 lb plums, rum 101, 750 ml', '/plan of:3 lb plums spirit:750 ml rum 101 proof'],
  ['90-proof gin, a fifth, 1 lb sloes', '/plan of:1 lb sloes spirit:1 fifth gin 90 proof'],
  ['quart of 100 proof vodka, 2 lb sour cherries', '/plan of:2 lb sour cherries spirit:1 quart vodka 100 proof'],
  ['9 limoni e mezzo litro di 96', '/plan of:9 limoni spirit:0.5 litro 96%'],
  ['a litre of rum 80 and 6 limes', '/plan of:6 limes spirit:1 litre rum 80%'],
  ['8 oranges, 150 vodka, 90 g sugar', '/plan of:8 oranges spirit:150 ml vodka 40% sugar:90 g'],
  // What a vessel holds is poured.
  ['five 12 oz bottles of plum liqueur from vodka', '/plan of:plum strength:40% bottles:5 x 12 fl oz'],
  ['3 sixteen ounce bottles of limoncello', '/plan of:lemons strength:95% bottles:3 x 16 fl oz'],
  ['eight 4-oz jars of quince liqueur', '/plan of:quince strength:40% bottles:8 x 4 fl oz'],
  ['six 200 ml jars of quince liqueur', '/plan of:quince strength:40% bottles:6 x 200 ml'],
  ['8 oz bottles, six of them, of lime liqueur', '/plan of:lime strength:95% bottles:6 x 8 fl oz'],
  ['cinque bottiglie da 12 oz di limoncello', '/plan of:limoni strength:95% bottles:5 x 12 fl oz'],
  ['8 oz raspberries and two 8 oz cups of gin', '/plan of:8 oz raspberries spirit:16 fl oz gin 40%'],
  // How large a bottle is, behind what stands on its label.
  ['9 lemons and a bottle of 96% 50cl', '/plan of:9 lemons spirit:50 cl 96%'],
  ['9 lemons and 2 bottles of 96% 50cl', '/plan of:9 lemons spirit:2 x 50 cl 96%'],
  ['a bottle of 151 proof rum, 750 ml, and 6 limes', '/plan of:6 limes spirit:750 ml rum 151 proof'],
  ['11 limoni e una bottiglia di 96% da 50 cl', '/plan of:11 limoni spirit:50 cl 96%'],
  ['9 lemons, a litre of 96%, 6 bottles of 50 cl', '/plan of:9 lemons spirit:1 litre 96% bottles:6 x 50 cl'],
  // A recipe with its own water.
  [
    'a pint of 190 proof, 2 cups water, 2 cups sugar, 8 lemons',
    '/plan of:8 lemons spirit:1 pint 190 proof sugar:2 cups water:2 cups',
  ],
  [
    '1 lb blackberries, a fifth of vodka, 6 oz sugar, a cup and a half of water',
    '/plan of:1 lb blackberries spirit:1 fifth vodka 40% sugar:6 oz water:1.5 cup',
  ],
  ['7 lemons, a litre of 95%, a litre of water', '/plan of:7 lemons spirit:1 litre 95% water:1 litre'],
  // Several that sweeten.
  [
    '2 lb damsons, a fifth of gin, 8 oz sugar and 4 oz of honey',
    '/plan of:2 lb damsons spirit:1 fifth gin 40% sugar:8 oz + 4 oz honey',
  ],
  [
    '9 lemons, a litre of 60%, 150 g of sugar plus 90 g honey',
    '/plan of:9 lemons spirit:1 litre 60% sugar:150 g + 90 g honey',
  ],
  // Parts of a measure.
  ['two and a quarter cups of rum and 5 limes', '/plan of:5 limes spirit:2.25 cups rum 40%'],
  ['two thirds of a cup of sugar, a pint of gin, 7 plums', '/plan of:7 plums spirit:1 pint gin 40% sugar:0.667 cup'],
  ['one and two thirds cups of brandy and 6 figs', '/plan of:6 figs spirit:1.67 cups brandy 40%'],
  ['un litro e un quarto di gin e 6 limoni', '/plan of:6 limoni spirit:1.25 litro gin 40%'],
  ['7 pears and a quarter of a litre of rum', '/plan of:7 pears spirit:0.25 litre rum 40%'],
])('%s', (said, read) => {
  it('is understood as the line', async () => {
    const one = await talkerFor({ after: null })
    expect((await one.say(said)).read).toBe(read)
  })
})

describe('an amount less another', () => {
  it.each([
    ['strained it, a quart less half a cup', '3.5 cup'],
    ['strained it, a litre minus 75 ml', '925 ml'],
    ['strained it, a quarter cup short of a quart', '3.75 cup'],
    ['strained it, 100 ml shy of a litre', '900 ml'],
    ['ho filtrato il limone, un litro meno 80 ml', '920 ml'],
  ])('%s', async (said, measured) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect((await one.say(said)).read).toBe(`/jar strain lemon measured:${measured}`)
  })
})

describe('an option takes an amount in words', () => {
  // 236.588 ml to the US cup: NIST Handbook 44, Appendix C.
  it.each([
    ['/jar strain lemon measured:three and a half cups', 3.5 * 236.588],
    ['/jar strain lemon measured:a cup and a half', 1.5 * 236.588],
    ['/jar strain lemon measured:a quart less half a cup', 3.5 * 236.588],
    ['/jar strain lemon measured:mezzo litro', 500],
  ])('%s', async (line, ml) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect((await one.say(line)).code).toBeNull()
    const { jars } = await one.store.read('local')
    expect(jars.flatMap(({ entries }) => entries).at(-1)).toMatchObject({
      measured: { amount: { value: expect.closeTo(ml, 0) as number } },
    })
  })

  it('and what it cannot read is refused as it was', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect((await one.say('/jar strain lemon measured:a good glug')).code).toBe('bad_value')
  })
})

describe('prices by the bottle as it is called', () => {
  it.each([
    ['limes are 40 cents each and rum is $18 a fifth', 'limes 40 cents each + rum $18/fifth'],
    ['vodka is $24 a handle and cherries are $3 a pound', 'vodka $24/handle + cherries $3/pound'],
    ['gin costs £21 a litre, sloes £4 a kilo', 'gin £21/litre + sloes £4/kilo'],
  ])('%s', async (said, prices) => {
    const one = await talkerFor({ after: null })
    const { read, code } = await one.say(said)
    expect([read, code]).toEqual([`/cost prices:${prices}`, null])
  })

  it('keeps the other prices in the line it offers for one that it cannot read', async () => {
    const one = await talkerFor({ after: null })
    const { outcome } = await one.hear('/cost prices:limes 40 cents each + rum $18 a glug')
    expect(outcome.ok ? null : outcome.error.values).toMatchObject({ example: 'limes 40 cents each + rum $18/l' })
  })
})

it('takes a drink’s name alone for no word of Italian', async () => {
  const one = await talkerFor({ after: null })
  const { read } = await one.say('limoncello, 9 lemons, 1 l 95%, 600 g sugar')
  expect(read).toBe('/plan of:9 lemons spirit:1 l 95% sugar:600 g')
})
