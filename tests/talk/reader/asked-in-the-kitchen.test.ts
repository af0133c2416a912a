import { expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

it.each([
  ['how do I zest an orange without getting pith', 'pith'],
  ['how do you peel grapefruit and leave the white part', 'pith'],
  ['how do I scrape the bitter white layer off the peels', 'pith'],
  ['come si sbuccia un’arancia senza il bianco', 'pith'],
  ['how do I make limoncello muffins', 'cook_with'],
  ['can I use sloe gin in a trifle', 'cook_with'],
  ['ricetta torta al nocino', 'cook_with'],
  ['how do I make an arancello spritz', 'serve_mixed'],
  ['how much alcohol is in a glass of limoncello', 'serving_size'],
])('is answered by the handbook: %s', async (text, entry) => {
  const one = await talkerFor({ after: null })
  expect(await one.say(text)).toMatchObject({ command: 'handbook', data: { entry } })
})

it.each([
  ['sour cherries and rum', '/plan of:sour cherries spirit:1 l rum 40%'],
  ['bitter oranges and vodka', '/plan of:bitter oranges spirit:1 l vodka 40%'],
])('takes what is said of a fruit for no trouble: %s', async (text, read) => {
  const one = await talkerFor({ after: null })
  expect(await one.say(text)).toMatchObject({ read, code: null })
})

it.each([
  ['it tastes of sour cherries and it is too sour', '/trouble sour'],
  ['the drink is bitter', '/trouble bitter'],
])('still takes for trouble what the drink tastes of: %s', async (text, read) => {
  const one = await talkerFor({ after: null })
  expect((await one.say(text)).read).toMatch(new RegExp(`^${read}`))
})

it.each([
  [null, 'I have 3 pounds of sugar at home', '/shopping have:3 pounds sugar'],
  [null, 'ho 500 g di miele in casa', '/shopping have:500 g miele'],
  ['lemon', 'we have a kilo of sugar in the pantry', '/shopping have:1 kilo sugar'],
  [
    'lemon_ginger',
    'shopping list for the lemon and the ginger, I have 500 g of sugar',
    '/shopping lemon + ginger have:500 g sugar',
  ],
  ['lemon', 'lista della spesa per lemon, ho 1 kg di zucchero', '/shopping lemon have:1 kg zucchero'],
] as const)('buys less of what is at home: %s: %s', async (shelf, text, read) => {
  const one = await talkerFor({ after: null, ...(shelf !== null && { shelf: shelf as Shelf }) })
  expect((await one.say(text)).read).toBe(read)
})

it.each([
  ['how many standard drinks in 3 oz of 25%', '/serving pour:3 fl oz strength:25%'],
  ['what does a 2 oz pour of 35% hold', '/serving pour:2 fl oz strength:35%'],
  ['how much alcohol is there in a 1 1/2 ounce shot of 40%', '/serving pour:1 1/2 fl oz strength:40%'],
])('pours by the ounce: %s', async (text, read) => {
  const one = await talkerFor({ after: null })
  expect(await one.say(text)).toMatchObject({ read, code: null })
})

it.each(['how much alcohol is in a shot of the lemon', 'quanto alcol c’è in un bicchierino del lemon'])(
  'takes the usual glass of a finished jar, and asks how big it is of one that steeps: %s',
  async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    expect(await one.say(text)).toMatchObject({ read: '/serving pour:40 ml strength:30%', code: null })
    const steeping = await talkerFor({ after: null, shelf: 'lemon' })
    expect(await steeping.say(text)).toMatchObject({ command: 'serving', code: 'question' })
  },
)

it.each([
  ['tipped in a litre of gin and got only 820 ml back', 'kept_back'],
  ['I put 700 ml in and just 600 ml came out, where did it go', 'kept_back'],
  ['started with 2 litres and ended up with 1.7, who drank the rest', 'kept_back'],
  ['would it be faster if I stood the jar over the gas', 'heat_to_speed'],
  ['does heating it on the hob speed up the steeping', 'heat_to_speed'],
  ['if I warm it up a bit on the cooker is it ready sooner', 'heat_to_speed'],
  ['posso scaldarlo per fare prima', 'heat_to_speed'],
])('is answered by the entry that says why: %s', async (text, entry) => {
  const one = await talkerFor({ after: null })
  expect(await one.say(text)).toMatchObject({ command: 'handbook', data: { entry }, recorded: 0 })
})

it('still warns of a jar that stands on the hob', async () => {
  const one = await talkerFor({ after: null })
  expect(await one.say('can I keep the jar on the hob')).toMatchObject({
    command: 'handbook',
    data: { entry: 'flame' },
  })
})

it.each([
  ['would a bottle of 22% with 180 g sugar per litre go solid in the freezer', '/blend parts:1 l 22% 180 g/L'],
  ['does a bottle of 30% with 200 g/l turn to ice in the freezer', '/blend parts:1 l 30% 200 g/L'],
  ['will a bottle of 28% freeze solid in the freezer', '/mix spirit:1 l 28%'],
  ['could 20% with 250 g/l go rock hard in the freezer', '/blend parts:1 l 20% 250 g/L'],
])('works out whether it freezes, and takes it for no trouble: %s', async (text, read) => {
  const one = await talkerFor({ after: null })
  expect(await one.say(text)).toMatchObject({ read, code: null })
})

it('still takes for trouble what has frozen', async () => {
  const one = await talkerFor({ after: null })
  expect((await one.say('a bottle of 24% has gone solid in the freezer')).read).toMatch(/^\/trouble froze/)
})

it('takes the weather for no heather', async () => {
  const one = await talkerFor({ after: null })
  expect((await one.say('what can I make in this weather')).read).not.toMatch(/weather|heather/)
})
