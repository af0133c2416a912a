import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

/** As makers would say it; none of these stands in the corpus. */
describe.each([
  // A spirit by its kind, by a name that nothing knows, and as bottles are called in the United States.
  ['6 oranges and 700 ml of pure alcohol', '/plan of:6 oranges spirit:700 ml 96%'],
  ['12 limoni con un litro di alcol alimentare', '/plan of:12 limoni spirit:1 litro 96%'],
  ['750 ml of zorble 80 and 400 g raspberries', '/plan of:400 g raspberries spirit:750 ml 80%'],
  ['10 oz strawberries + 16 fl oz of zorble 151', '/plan of:10 oz strawberries spirit:16 fl oz 151 proof'],
  ['20 lemons and a handle of vodka', '/plan of:20 lemons spirit:1 handle vodka 40%'],
  ['2 lb rhubarb and a fifth of rum', '/plan of:2 lb rhubarb spirit:1 fifth rum 40%'],
  ['blueberry vodka with a 750 ml bottle at 37.5', '/plan of:blueberry spirit:750 ml vodka 37.5%'],
  ['9 limes and one bottle rum 750 ml 41.5%', '/plan of:9 limes spirit:750 ml rum 41.5%'],
  ['7 oranges, bottle of gin 41.2', '/plan of:7 oranges spirit:700 ml gin 41.2%'],
  ['eight limes and some 95, roughly 750 ml', '/plan of:8 limes spirit:750 ml 95%'],
  ['lemon, three litre bottles, 28 percent', '/plan of:lemon strength:95% bottles:3 x 1 l to-strength:28%'],
  // Ounces of a spirit are fluid, however it is told that it is one.
  ['peel of ten lemons with 20 oz of 190 proof', '/plan of:10 lemons spirit:20 fl oz 190 proof'],
  ['16 oz of blueberries, 16 oz of 100 proof', '/plan of:16 oz blueberries spirit:16 fl oz 100 proof'],
  ['8 oranges and 25 oz of zorble 151 proof', '/plan of:8 oranges spirit:25 fl oz 151 proof'],
  // No spirit is sold so weak.
  ['limoncello with 15 lemons finishing around 30 percent', '/plan of:15 lemons spirit:1 l 95% to-strength:30%'],
  ['sloe gin, 500 g sloes, 25 percent', '/plan of:500 g sloes spirit:700 ml gin 40% to-strength:25%'],
  ['the choir wants 20 of those little 4 oz bottles of peach', '/plan of:peach strength:40% bottles:20 x 4 fl oz'],
  // Drinks by what is in them.
  ['nocino: 30 noci e un litro di alcol a 95', '/plan of:30 noci verdi spirit:1 litro 95%'],
  ['cherry brandy: 1 kg morello cherries, 70 cl brandy', '/plan of:1 kg morello cherries spirit:70 cl brandy 40%'],
  ['quince rum', '/plan of:quince spirit:700 ml rum 40%'],
  ['pear brandy, steeped', '/plan of:pear spirit:700 ml brandy 40%'],
  ['damson gin, 1.5 litres', '/plan of:damsons spirit:1.5 litres gin 40%'],
  ['litre and a half of sloe gin please', '/plan of:sloes spirit:1.5 litre gin 40%'],
  ['a plum liquer for the fair', '/plan of:plum spirit:1 l 40%'],
  ['liquore alla liquirizia', '/plan of:liquirizia spirit:1 l 40%'],
  // What is counted, and what belongs to what.
  ['300 g of ginger and a lemon in a litre of vodka', '/plan of:300 g ginger + 1 lemon spirit:1 litre vodka 40%'],
  ['100 g zenzero e una arancia in 1 l di vodka', '/plan of:100 g zenzero + 1 arancia spirit:1 l vodka 40%'],
  // What a number is *of* has the unit of the weight before it.
  [
    '400 g of redcurrants and 300 of raspberries in a litre of vodka',
    '/plan of:400 g redcurrants + 300 g raspberries spirit:1 litre vodka 40%',
  ],
  ['2 kg of damsons and 1 of sloes, 3 litres of gin', '/plan of:2 kg damsons + 1 kg sloes spirit:3 litres gin 40%'],
  ['un litro di alcol a 95, 300 g di lamponi e 200 di more', '/plan of:300 g lamponi + 200 g more spirit:1 litro 95%'],
  ['500 g of plums and 20 cloves in a litre of vodka', '/plan of:500 g plums + 20 cloves spirit:1 litre vodka 40%'],
  [
    '500 g of plums and 20 whole cloves in a litre of vodka',
    '/plan of:500 g plums + 20 whole cloves spirit:1 litre vodka 40%',
  ],
  [
    'orange and star anise, 6 oranges, 2 stars, 1 l vodka',
    '/plan of:2 stars of star anise + 6 oranges spirit:1 l vodka 40%',
  ],
  ['alloro 15 foglie fresche, 1 litro alcol 95', '/plan of:15 foglie fresche di alloro spirit:1 litro 95%'],
  ['twenty small 100 ml bottles of raspberry for the wedding', '/plan of:raspberry strength:40% bottles:20 x 100 ml'],
  [
    'mi servono dieci bottiglie da 100 ml di limoncello per la pesca di beneficenza',
    '/plan of:limoni strength:95% bottles:10 x 100 ml',
  ],
  ['1.5 l of 96, want mandarin at around 28, how many do i need', '/plan of:mandarin spirit:1.5 l 96% to-strength:28%'],
  // A plan says how much sugar, for how long, and whether it is enough.
  ['eight plums, 70cl brandy. how long and how much sugar?', '/plan of:8 plums spirit:70 cl brandy 40%'],
  ['is 500 g of raspberries enough for a litre of vodka?', '/plan of:500 g raspberries spirit:1 litre vodka 40%'],
  ['bastano 10 limoni per un litro di alcol a 95?', '/plan of:10 limoni spirit:1 litro 95%'],
  ['3 star anise, 2 oranges, 500 ml of 60%', '/plan of:3 star anise + 2 oranges spirit:500 ml 60%'],
  ['1 melon (1.5 kg) and a litre of vodka', '/plan of:1.5 kg melon spirit:1 litre vodka 40%'],
  ['figs from the wall, about 15 of them, 700 ml of rum', '/plan of:15 figs spirit:700 ml rum 40%'],
  [
    'cardamom and coffee, 8 pods and 60 g, in 70cl of vodka',
    '/plan of:8 pods of cardamom + 60 g coffee spirit:70 cl vodka 40%',
  ],
  ['half of a litre of 95 and 6 lemons', '/plan of:6 lemons spirit:0.5 litre 95%'],
  ['700 ml gin, 300 g sloes, 3/4 cup sugar', '/plan of:300 g sloes spirit:700 ml gin 40% sugar:3/4 cup'],
  ['5 bottles of plum liqueur, 700 ml each', '/plan of:plum strength:40% bottles:5 x 700 ml'],
  [
    '1.5 kg peaches. 1.5 l of 60. strength 27, sugar 180 g per litre',
    '/plan of:1.5 kg peaches spirit:1.5 l 60% to-strength:27% to-sweetness:180 g/L',
  ],
  [
    'zenzero e pompelmo in 1 litro di vodka, poco dolce',
    '/plan of:zenzero + pompelmo spirit:1 litro vodka 40% to-sweetness:dry',
  ],
  ['400 g of sloes and as much gin as it takes', '/plan of:400 g sloes spirit:1 l gin 40%'],
  [
    'found a recipe: 1 kg raspberries, 1 l vodka, 300 g sugar, 60 days in the dark',
    '/plan of:1 kg raspberries spirit:1 l vodka 40% sugar:300 g days:60 days',
  ],
  // Spirit brought down.
  ['make 40 out of 1 litre of 95', '/dilute spirit:1 litre strength:95% to-strength:40%'],
  ['turn 2 litres of 96 into vodka', '/dilute spirit:2 litres strength:96% to-strength:40%'],
  ['vodka strength from half a litre of 95', '/dilute spirit:0.5 litre strength:95% to-strength:40%'],
  ['bring 750 ml of 151 proof to 80 proof', '/dilute spirit:750 ml strength:151 proof to-strength:80 proof'],
  ['quanta acqua in 3 litri a 95 per averlo a 40', '/dilute spirit:3 litri strength:95% to-strength:40%'],
  // Mixed, blended, put right.
  [
    '2 cups zorble at 192 proof, 3 cups water, 2 cups sugar - proof?',
    '/mix spirit:2 cups 192 proof water:3 cups sugar:2 cups',
  ],
  ['500 ml at 35 180 g/l and 500 ml at 25 220 g/l mixed', '/blend parts:500 ml 35% 180 g/L + 500 ml 25% 220 g/L'],
  [
    '300 ml orange 30% 200 g/l with 700 ml coffee 25% 300 g/l, put together?',
    '/blend parts:300 ml 30% 200 g/L + 700 ml 25% 300 g/L',
  ],
  ['2 l at 30% 380 g/l, way too syrupy', '/adjust liqueur:2 l strength:30% sweetness:380 g/L to-sweetness:270 g/L'],
  [
    '1 litro di liquore, 35%, 200 g/l, lo voglio a 28',
    '/adjust liqueur:1 litro strength:35% sweetness:200 g/L to-strength:28%',
  ],
  // Of a plant.
  ['how many oranges for 2 litres of 50', '/botanical of:oranges spirit:2 litres 50%'],
  ['bottle of gin, how many sloes do I need', '/botanical of:sloes spirit:700 ml gin'],
  ['a fifth of vodka, how many lemons?', '/botanical of:lemons spirit:1 fifth vodka'],
  ['quanti chiodi di garofano in mezzo litro di grappa', '/botanical of:chiodi di garofano spirit:0.5 litro grappa'],
  ['how much ginger per litre', '/botanical of:ginger'],
  ['how many pounds of plums for a handle', '/botanical of:plums spirit:1 handle'],
  ['I have 4 lb of plums, how much brandy', '/plan of:4 lb plums spirit:2 1/2 quarts brandy 40% have:4 lb plums'],
  ['I have 1 lb of peaches, how much bourbon', '/plan of:1 lb peaches spirit:1 quart bourbon 40% have:1 lb peaches'],
  ['I have 2 kg of plums, how much brandy', '/plan of:2 kg plums spirit:3 l brandy 40% have:2 kg plums'],
  ["does buddha's hand work", "/botanical of:buddha's hand"],
  ['il melograno va bene per fare un liquore?', '/botanical of:melograno'],
])('%s', (text, line) => {
  it(`is ${line}`, async () => {
    expect((await talker().say(text)).read).toBe(line)
  })
})

it('reads what went wrong with a drink before what the drink is', async () => {
  expect((await talker().say('the plum brandy has turned to jelly')).read).toMatch(/^\/trouble set like jelly/)
})

describe('after a plan', () => {
  it.each([
    ['use honey instead', '/plan of:10 lemons spirit:1 l 95% sugar:honey'],
    ['and with brown sugar?', '/plan of:10 lemons spirit:1 l 95% sugar:brown sugar'],
    ['col miele invece', '/plan of:10 lemons spirit:1 l 95% sugar:miele'],
  ])('%s takes another sweetener', async (text, line) => {
    const one = talker()
    await one.say('/plan of:10 lemons spirit:1 l 95%')
    expect((await one.say(text)).read).toBe(line)
  })

  it('keeps the amount of what it is sweetened with', async () => {
    const one = talker()
    await one.say('/plan of:1 lb sloes spirit:700 ml gin 40% sugar:200 g')
    expect((await one.say('what if i use maple syrup')).read).toMatch(/sugar:200 g maple syrup$/)
  })
})

it.each([
  ['a plum liqueur', '1 l 40%'],
  ['8 arance e 700 ml di alcol puro', '700 ml 96%'],
])('%s says which spirit was taken', async (text, spirit) => {
  const { outcome } = await talker().hear(text)
  const notes = outcome.ok && 'reply' in outcome ? outcome.reply.notes : []
  expect(notes[0]).toMatchObject({ key: 'spirit_taken', values: { spirit } })
})

it.each([
  ['two glasses of that: how much alcohol', '/serving pour:80 ml strength:28%'],
  ['how many units in a 50 ml glass', '/serving pour:50 ml strength:28%'],
])('after a strength that was wished, %s is counted', async (text, line) => {
  const one = talker()
  await one.say('/syrup infusion:920 ml strength:82% to-strength:28%')
  expect((await one.say(text)).read).toBe(line)
})

it.each(['how many glasses is a bottle', 'how many shots does a litre give', 'quanti bicchierini da un litro'])(
  '%s is what a glass holds',
  async (text) => {
    expect(await talker().say(text)).toMatchObject({ command: 'handbook', data: { entry: 'serving_size' } })
  },
)
