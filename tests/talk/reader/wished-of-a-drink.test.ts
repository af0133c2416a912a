import { describe, expect, it } from 'vitest'
import { refusedIn } from '../../../core/botanical/refuse/refused-in.ts'
import { talker } from './told.ts'

// Which number is there and which is wished; ours, no source.
describe.each([
  // Behind what is wrong with it, one more number of that kind is the wish.
  [
    'my plum is 2.5 l, 32 %, 350 g/l. Far too sweet. 250 would do',
    '/adjust liqueur:2.5 l strength:32% sweetness:350 g/L to-sweetness:250 g/L',
  ],
  [
    '1 litre 30%, 340 g/L, cloying. rather have 200',
    '/adjust liqueur:1 litre strength:30% sweetness:340 g/L to-sweetness:200 g/L',
  ],
  [
    '2 litri a 32 con 310 g di zucchero al litro, troppo dolce, meglio 200',
    '/adjust liqueur:2 litri strength:32% sweetness:310 g/L to-sweetness:200 g/L',
  ],
  [
    'we have 4 litres at 24% with 250 g/l and it’s too weak, 30 would be nicer',
    '/adjust liqueur:4 litres strength:24% sweetness:250 g/L to-strength:30%',
  ],
  // On the wrong side it is none, and nothing is guessed of it.
  ['1 litre 30%, 200 g/L, too sweet, 340', null],
  // Sugar to a litre, with its word between.
  [
    '1.5 l at 20%, 240 sugar per litre, too weak, want 28',
    '/adjust liqueur:1.5 l strength:20% sweetness:240 g/L to-strength:28%',
  ],
  // What a drink has, told with it.
  [
    'too strong, I’ve 2 litres at 42% with 400 g sugar, would like 32',
    '/adjust liqueur:2 litres strength:42% sweetness:200 g/L to-strength:32%',
  ],
  [
    'half a litre at 36 with 100 grams of sugar, too strong for us, 28 please',
    '/adjust liqueur:0.5 litre strength:36% sweetness:200 g/L to-strength:28%',
  ],
  [
    'due litri e mezzo a 40 gradi, 200 g/L, troppo forte, lo porterei a 30',
    '/adjust liqueur:2.5 litri strength:40% sweetness:200 g/L to-strength:30%',
  ],
  // As it is to come out.
  [
    '500 ml at 60 strained, the sugar for 150 grams a litre please',
    '/syrup infusion:500 ml strength:60% to-sweetness:150 g/L',
  ],
  ['700 ml a 60, quanto zucchero per 130 grammi al litro', '/syrup infusion:700 ml strength:60% to-sweetness:130 g/L'],
  ['900 ml at 80, sugar and water so that it has 30', '/syrup infusion:900 ml strength:80% to-strength:30%'],
  [
    'I have 1 l of infusion at 88%, how much sugar and water so it gets 32',
    '/syrup infusion:1 l strength:88% to-strength:32%',
  ],
  [
    'how much water do I give to a litre of spirit 96 to have 60',
    '/dilute spirit:1 litre strength:96% to-strength:60%',
  ],
  ['how much of water for 1 liter of alcohol 96 so I have 70', '/dilute spirit:1 liter strength:96% to-strength:70%'],
])('“%s”', (text, read) => {
  it(`is read as ${read}`, async () => {
    const told = await talker().say(text)
    if (read === null) expect(told.code).toBe('question')
    else expect(told.read).toBe(read)
  })
})

it.each([
  'siamo in trenta, 20 ml a testa, bottiglie da 500: quante me ne servono?',
  'there’ll be sixty of us, 30 ml each, how many half litre bottles',
  'thirty-five mouths, 40 ml each, bottles of 500, how many',
])('answers how far bottles go: %s', async (text) => {
  expect((await talker().say(text)).data.entry).toBe('serving_size')
})

const INSTRUMENTS =
  'hydrometer, spindle, alcohol spindle, sugar spindle, areometer, alcoholmeter, alcoholometer, alcometer, vinometer, saccharometer, densimeter, refractometer, alcolometro, densimetro, mostimetro'

describe.each(INSTRUMENTS.split(', '))('a %s', (name) => {
  it.each([
    `my ${name} says 84 %, 900 ml`,
    `900 ml strained, ${name} 86`,
    `strained the elderflower, ${name} reading 60`,
    `got 84 on the ${name}`,
    `measured with my ${name}: 84 %, 1 litre, want 30`,
    `which ${name} should I buy`,
    `I broke my ${name}`,
  ])('is never refused: %s', (text) => {
    expect(refusedIn(text)).toEqual([])
  })
})

it.each([
  '300 g spindle and a litre of vodka',
  'spindle with a litre of 95',
  'can I use spindle in gin',
  'vodka with spindle, 40 %',
  'lemon and spindle 84%',
  'I picked a spindle from the hedge, a handful in 1 l vodka',
  'spindle tree fruit 50 g',
  'spindle 84 g, vodka 1 l',
  'the spindle berries say 40 %',
  'is spindle poisonous',
  'put the spindle into the vodka, 40 %',
  'got a spindle, 3 in a litre of vodka',
])('refuses the shrub: %s', (text) => {
  expect(refusedIn(text).map(({ id }) => id)).toContain('garden_poisons')
})

it('reads what a spindle shows as what a hydrometer shows', async () => {
  const told = await talker().say('640 ml came out, the spindle says 82 %. Sugar and water for 28 %?')
  expect(told.read).toBe('/syrup infusion:640 ml strength:82% to-strength:28%')
})
