import { describe, expect, it } from 'vitest'
import { eachIsRecorded } from './by-shelf.ts'
import { talker, talkerFor } from './told.ts'

/** As they are said in a hurry, in the North and in few words; none of these stands in the corpus. */
describe('amounts in few words', () => {
  it.each([
    ['ten limes an half a litre o gin', '/plan of:10 limes spirit:0.5 litre gin 40%'],
    ['a bottle o gin n 500g sloes', '/plan of:500 g sloes spirit:700 ml gin 40%'],
    [
      'damsons 900g n a litre o 40% vodka, no too sweet',
      '/plan of:900 g damsons spirit:1 litre vodka 40% to-sweetness:dry',
    ],
    ['brambles an rum, 600g an a 70cl bottle', '/plan of:600 g brambles spirit:70 cl rum 40%'],
    ['500g cherries w/ 70cl brandy', '/plan of:500 g cherries spirit:70 cl brandy 40%'],
    ['a bottle of gin (70) and 300 g sloes', '/plan of:300 g sloes spirit:700 ml gin 40%'],
    ['a bottle of rum (75) and 2 kg pineapple', '/plan of:2 kg pineapple spirit:750 ml rum 40%'],
    [
      'a litre of vodka and 2 lb strawberries, strong like 32%',
      '/plan of:2 lb strawberries spirit:1 litre vodka 40% to-strength:32%',
    ],
    ['70 cl vodka, 500 g raspberries, about 28%', '/plan of:500 g raspberries spirit:70 cl vodka 40% to-strength:28%'],
    [
      '500 g di lamponi, un litro di vodka, sui 28 gradi',
      '/plan of:500 g lamponi spirit:1 litro vodka 40% to-strength:28%',
    ],
    ['700 ml of 30% schnapps and 300 g plums', '/plan of:300 g plums spirit:700 ml schnapps 30%'],
    ['how many sloes for 3 litres at 25%', '/plan of:sloes strength:40% bottles:1 x 3 litres to-strength:25%'],
    ['quanti limoni per tre litri a 30 gradi', '/plan of:limoni strength:95% bottles:1 x 3 litri to-strength:30%'],
    ['700ml 60%, sugar and water to reach 27', '/syrup infusion:700 ml strength:60% to-strength:27%'],
    ['1,1 l di infuso a 60. sciroppo per arrivare a 28?', '/syrup infusion:1,1 l strength:60% to-strength:28%'],
    ['how many lemons for a litre of 95', '/botanical of:lemons spirit:1 litre 95%'],
  ])('%s', async (text, read) => {
    expect(await talker().say(text)).toMatchObject({ read, recorded: 0 })
  })
})

/** `To` for `too`: what is too sweet is not to be sweeter. */
describe('a letter short of too much', () => {
  it.each([
    ['its to sweet', '/trouble too sweet jar:lemon'],
    ['it came out to strong', null],
    ['a bit to dry', '/trouble not sweet enough jar:lemon'],
    ['its way to bitter', '/trouble bitter jar:lemon'],
  ] as const)('%s', async (text, read) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_sweetened' })
    const told = await one.say(text)
    expect(told.recorded).toBe(0)
    if (read !== null) expect(told.read).toBe(read)
    expect(told.read ?? '').not.toMatch(/to-(?:sweetness|strength)/)
  })

  it('is a wish where nothing is told to be so', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_strained' })
    expect((await one.say('bring it to dry')).read).toBe('/syrup jar:lemon to-sweetness:dry')
  })
})

eachIsRecorded({
  lemon: [
    ["the fruit's oot, got 900", '/jar strain lemon measured:900 ml'],
    ['lemon out, leaving 910', '/jar strain lemon measured:910 ml'],
    ['scorze via, 930 a 87', '/jar strain lemon measured:930 ml strength:87%'],
    ['930 came off it', '/jar strain lemon measured:930 ml'],
  ],
  lemon_ginger: [
    ['cardamom in the lemon, 5 pods', '/jar add lemon of:5 pods of cardamom'],
    ['vaniglia nello zenzero, 1 baccello', '/jar add ginger of:1 baccello di vaniglia'],
    ['2 cloves in the lemon', '/jar add lemon of:2 cloves'],
  ],
  lemon_strained: [
    ['sugar and water in, 400 g and 1 l', '/jar sweeten lemon sugar:400 g water:1 l'],
    ['in: 500g sugar 1.5l water', '/jar sweeten lemon sugar:500 g water:1.5 l'],
    ['dentro lo sciroppo, 500 g zucchero e 1 l acqua', '/jar sweeten lemon sugar:500 g water:1 l'],
    ['just water in the lemon, 1.1 l', '/jar sweeten lemon water:1.1 l'],
    ['lemon thru a coffee filter, 850', '/jar filter lemon measured:850 ml'],
  ],
  fair: [
    ['added another 50 ml of water to the orange', '/jar add orange water:50 ml'],
    ['arancia nel filtro da caffè, 1,5 l', '/jar filter orange measured:1,5 l'],
    ['orange out of the filter, 1.5 l', '/jar filter orange measured:1.5 l'],
    ['polished off one raspberry yesterday', '/bottles raspberry opened:1 when:yesterday'],
    ['1 raspberry went as a present', '/bottles raspberry given:1'],
    ['orange bottled x4', '/jar bottle orange bottles:4'],
  ],
  lemon_sweetened: [
    ["lemon's bottled. 4 of em", '/jar bottle lemon bottles:4'],
    ['bottled it: two large 700 and two small 250', '/jar bottle lemon bottles:2 x 700 ml + 2 x 250 ml'],
    ['imbottigliato, quattro grandi da 500 e una piccola da 250', '/jar bottle lemon bottles:4 x 500 ml + 1 x 250 ml'],
  ],
  lemon_bottled: [
    ['3 lemons off to the neighbours as gifts', '/bottles lemon given:3'],
    ['ci siamo fatti fuori una bottiglia di limone', '/bottles lemon opened:1'],
  ],
})

it('strains each of two jars that are told with their amounts alone', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  const told = await one.say('lemon off at 900, ginger off at 600')
  expect([told, ...told.also].map(({ read }) => read)).toEqual([
    '/jar strain lemon measured:900 ml',
    '/jar strain ginger measured:600 ml',
  ])
})

it('makes a batch again that is called the same, with another spirit', async () => {
  const one = await talkerFor({ after: null, shelf: 'fair' })
  const read = '/again raspberry spirit:50 cl gin 40%'
  expect(await one.say('same raspberry again but with 50 cl of gin')).toMatchObject({ read, recorded: 0 })
})

it.each([
  'how many 30 ml shots in a 70cl bottle',
  'how many wee drams in 700ml',
  '70 guests, 25 ml each, how many 70cl bottles',
  'quanti bicchierini da 30 ml in un litro',
])('%s is answered by what a glass holds', async (text) => {
  expect(await talker().say(text)).toMatchObject({ command: 'handbook', data: { entry: 'serving_size' } })
})

it.each([
  ['started 6 limes in 1 l of 95% called Foxglove Cottage', '/jar start Foxglove Cottage of:6 limes spirit:1 l 95%'],
  [
    'started a jar called Rosehip Row: 500 g sloes in 70 cl gin',
    '/jar start Rosehip Row of:500 g sloes spirit:70 cl gin 40%',
  ],
  [
    'ho iniziato un vaso chiamato Orto Tre con 10 limoni in 1 l di alcol 95',
    '/jar start Orto Tre of:10 limoni spirit:1 l 95%',
  ],
])('“%s” keeps the name', async (text, read) => {
  expect(await talker().say(text)).toMatchObject({ read, code: null, recorded: 1 })
})

it.each([
  ['poured 250 ml of the orange off into another jar, brunch', '/jar split orange amount:250 ml into:brunch'],
  ['poured 250 ml of the orange off into another jar, just for us', '/jar split orange amount:250 ml into:orange 2'],
])('“%s”', async (text, read) => {
  expect(await (await talkerFor({ after: null, shelf: 'fair' })).say(text)).toMatchObject({ read, code: null })
})

it('plans a batch that is only thought of without its name', async () => {
  const told = await talker().say('should i have started a jar called Rosehip Row: 500 g sloes in 70 cl gin?')
  expect(told).toMatchObject({ recorded: 0 })
  expect(told.read ?? '').not.toMatch(/name:/)
})

it.each([
  'hello, what can you do?',
  'hi there, what can you do?',
  'good morning! what do you do?',
  'hi! how do I start?',
  'ciao, cosa sai fare?',
])('answers what is asked behind a greeting: %s', async (text) => {
  expect((await talker().say(text)).command).toBe('help')
})
