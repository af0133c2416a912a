import { describe, expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

/** As makers tell it who tell more than they have to; none of these stands in the corpus. */
describe.each<readonly [text: string, read: string]>([
  // Counted apart from the plant.
  [
    'a neighbour dropped off a crate of lemons, I counted twenty, and there is a litre of 95% in the cupboard',
    '/plan of:20 lemons spirit:1 litre 95%',
  ],
  ['bag of limes, there turned out to be sixteen, and a litre of 60% alcohol', '/plan of:16 limes spirit:1 litre 60%'],
  [
    'mia zia ha portato una cassa di arance, ne ho scelte dodici, e un litro di alcol a 95',
    '/plan of:12 arance spirit:1 litro 95%',
  ],
  ['ho dei limoni, sono dodici, e un litro di alcool puro', '/plan of:12 limoni spirit:1 litro 96%'],
  ['figs x 20 and brandy 70cl', '/plan of:20 figs spirit:70 cl brandy 40%'],
  // Pounds go on in ounces, in words too.
  [
    'two pounds and three ounces of raspberries, 1 l vodka',
    '/plan of:2 pounds 3 ounces raspberries spirit:1 l vodka 40%',
  ],
  // Bottles in parts, and the size that is said behind them.
  ['a bottle and a half of rum and 600 g of figs', '/plan of:600 g figs spirit:1050 ml rum 40%'],
  ['una bottiglia e mezza di grappa e 500 g di more', '/plan of:500 g more spirit:1050 ml grappa 40%'],
  ['two bottles of brandy, 70 cl each, and 1.5 kg cherries', '/plan of:1.5 kg cherries spirit:2 x 70 cl brandy 40%'],
  ['half a bottle of brandy, a 70 cl one, and 250 g cherries', '/plan of:250 g cherries spirit:350 ml brandy 40%'],
  ['half a bottle of brandy (350 ml), 250 g cherries', '/plan of:250 g cherries spirit:350 ml brandy 40%'],
  // How old somebody is, and how many they are, are no amounts.
  [
    'my neighbour is 82 and gave me 1 kg of quinces, I have a litre of vodka',
    '/plan of:1 kg quinces spirit:1 litre vodka 40%',
  ],
  ['my two sons and I have exactly seven oranges and a litre of vodka', '/plan of:7 oranges spirit:1 litre vodka 40%'],
  ['siamo in tre e abbiamo nove lime e un litro di vodka', '/plan of:9 lime spirit:1 litro vodka 40%'],
  ['we are four friends and have nine limes and a litre of rum', '/plan of:9 limes spirit:1 litre rum 40%'],
  ['for her 30th, 1 kg cherries and a litre of brandy', '/plan of:1 kg cherries spirit:1 litre brandy 40%'],
  // How far it may go.
  ['no more than thirty per cent, 10 lemons, a litre of 95%', '/plan of:10 lemons spirit:1 litre 95% to-strength:30%'],
  ['8 oranges and 1 l of 96%, not beyond thirty', '/plan of:8 oranges spirit:1 l 96% to-strength:30%'],
  [
    '10 limoni, un litro di alcol a 95, non oltre i trenta gradi',
    '/plan of:10 limoni spirit:1 litro 95% to-strength:30%',
  ],
  // A day of the month in words.
  [
    '10 lemons and a litre of 95%, ready for the twentieth of December please',
    '/plan of:10 lemons spirit:1 litre 95% ready-by:20 of december',
  ],
  // What is had in bottles is the spirit that was named before.
  [
    'Thinking of figs in brandy: I have half a kilo and two 70 cl bottles',
    '/plan of:0.5 kilo figs spirit:2 x 70 cl brandy 40%',
  ],
  [
    'voglio mettere le ciliegie nella grappa, ne ho un chilo e una bottiglia da un litro',
    '/plan of:1 chilo ciliegie spirit:1 litro grappa 40%',
  ],
  // Whoever else is away asks for no peace, and the day is theirs.
  ['my husband is away until Friday, 1 kg plums and a litre of rum', '/plan of:1 kg plums spirit:1 litre rum 40%'],
  // How sweet it is to be.
  ['eight lemons and a litre of 95%, go easy on the sugar', '/plan of:8 lemons spirit:1 litre 95% to-sweetness:dry'],
  [
    '9 lime e un litro di vodka, non lo vorrei troppo dolce',
    '/plan of:9 lime spirit:1 litro vodka 40% to-sweetness:dry',
  ],
  [
    'un chilo di prugne e un litro di grappa, che non sia troppo dolce',
    '/plan of:1 chilo prugne spirit:1 litro grappa 40% to-sweetness:dry',
  ],
  // A slip in a unit.
  ['half a litr of gin and 300 g figs', '/plan of:300 g figs spirit:0.5 litre gin 40%'],
  // What only carries the fruit is no pan.
  [
    'abbiamo un secchio di mandarini, ne uso venti, e ho un litro di alcol 95',
    '/plan of:20 mandarini spirit:1 litro 95%',
  ],
  // Children who lend a hand.
  [
    'the kids picked 800 g of blackberries and I’ve a bottle of vodka, 70 cl',
    '/plan of:800 g blackberries spirit:70 cl vodka 40%',
  ],
  [
    'i bambini hanno raccolto un chilo di more e ho un litro di vodka a 40',
    '/plan of:1 chilo more spirit:1 litro vodka 40%',
  ],
])('%s', (text, read) => {
  it(`is ${read}`, async () => {
    const told = await (await talkerFor({ after: null })).say(text)
    // What of it is there is tried by itself.
    expect({ ...told, read: told.read?.replace(/ have:.*$/, '') }).toMatchObject({ read, code: null })
  })
})

describe.each<readonly [shelf: Shelf, text: string, read: string]>([
  [
    'lemon_sweetened',
    'bottled the lemon, my daughter held the funnel: two half-litre bottles and three little ones of two hundred millilitres',
    '/jar bottle lemon bottles:2 x 0.5 litre + 3 x 200 millilitres',
  ],
  ['lemon', 'shook the lemon while the kids were at school', '/jar shake lemon'],
  ['lemon_ginger', 'I shook both jars before I went to work', '/jar shake all'],
  ['lemon', 'shook the lemon before going to bed', '/jar shake lemon'],
  ['lemon', 'ho scosso il limone prima di uscire', '/jar shake lemon'],
  ['lemon', 'the children helped me strain the lemon, 920 ml at 84%', '/jar strain lemon measured:920 ml strength:84%'],
])('with %s: %s', (shelf, text, read) => {
  it(`is ${read}`, async () => {
    const { recorded, ...told } = await (await talkerFor({ after: null, shelf })).say(text)
    expect(told).toMatchObject({ read, code: null })
    expect(recorded).toBeGreaterThan(0)
  })
})

it.each([
  'the kids want to know if they can taste the lemon',
  'mia figlia ha 14 anni, può assaggiarlo?',
  'can my daughter have some, she’s 15',
  'my son picked the plums, can he drink the liqueur?',
])('a child that might have some is no bystander: %s', async (text) => {
  const told = await (await talkerFor({ after: null, shelf: 'lemon' })).say(text)
  expect(told).toMatchObject({ command: 'handbook', data: { entry: 'children' }, recorded: 0 })
})

it.each([
  'before I go to work I shake the lemon',
  'when I shook both jars it leaked, should I worry',
  'prima di uscire scuoto il limone',
])('records nothing: %s', async (text) => {
  expect(await (await talkerFor({ after: null, shelf: 'lemon_ginger' })).say(text)).toMatchObject({ recorded: 0 })
})

it('answers amounts with no entry of the handbook', async () => {
  const { command } = await (await talkerFor({ after: null })).say('a litr of vodca and 900g rasberies')
  expect(command).not.toBe('handbook')
})

/** Asked with a reason before or behind, and with what there is at home. */
it.each([
  ['I’ve two kilos of cherries here, must the stones come out?', 'stones_whole'],
  ['Do I have to take the stones out of the plums, or may they stay in? There’s three kilos of them.', 'stones_whole'],
  ['My wife says the jar has to stand in the dark, is she right?', 'steep_light'],
  ['Since I have no scales, how do I measure the sugar?', 'no_scales'],
  ['How long does an opened bottle keep? We hardly drink.', 'keep_opened'],
  ['Mia nonna lo faceva così, ma bisogna proprio togliere la parte bianca?', 'pith'],
  ['My mother always boiled the syrup, does it have to be boiled?', 'boil_syrup'],
  ['my aunt swears by tap water, does it have to be bottled water for the syrup?', 'which_water'],
  ['I’m in no hurry, but does it taste better after a few months?', 'rest'],
  ['I’m rather impatient, may I warm the jar to make it go faster?', 'heat_to_speed'],
])('the clause that asks is answered: %s', async (text, entry) => {
  const told = await (await talkerFor({ after: null })).say(text)
  expect(told).toMatchObject({ command: 'handbook', data: { entry } })
})

it('whoever brings a spirit has not made it', async () => {
  const told = await (await talkerFor({ after: null })).say(
    'my uncle brought us a litre of 95% alcohol, and I have ten lemons',
  )
  expect(told).toMatchObject({ code: null, command: 'plan' })
})

it.each(['my uncle’s spirit, one litre, and ten lemons', 'a litre of spirit from my cousin and ten lemons'])(
  'whose spirit it is tells of a still: %s',
  async (text) => {
    expect(await (await talkerFor({ after: null })).say(text)).toMatchObject({ code: 'refused' })
  },
)
