import { describe, expect, it } from 'vitest'
import { findLikelierSymptom, findSymptomTold } from '../../bot/talk/handbook/find-symptom-told.ts'
import { readOffTopic, sentencesOf } from './corpus.ts'
import { talker, talkerFor } from './reader/told.ts'

describe('a trouble is found by the words it is told in', () => {
  it.each([
    ['a bluish beard on the fruit', 'mould'],
    ['overnight it turned to sorbet in the freezer', 'frozen'],
    ['it reeks of a nail salon', 'solvent'],
    ['it has gone like a jam', 'gelled'],
    ['one drop a minute through the paper', 'stuck_filter'],
    ['the cream has turned to cottage cheese', 'curdled'],
    ['è così dolce che non si beve', 'too_sweet'],
    ['una peluria bianca sopra', 'mould'],
  ])('%s', (text, id) => {
    expect(findSymptomTold(text)?.id).toBe(id)
  })

  it('for no sentence of something else', () => {
    const answered = readOffTopic().filter(({ text }) => findSymptomTold(text) !== null)
    console.log(`troubles off topic: ${answered.length} of ${readOffTopic().length}`)
    expect(answered).toEqual([])
  })

  it('for most of those that were written down', () => {
    const told = (['own-1', 'own-2'] as const)
      .flatMap(sentencesOf)
      .filter(({ meaning }) => meaning.symptom !== undefined)
    const found = told.map(({ text, meaning }) => ({ text, meant: meaning.symptom, id: findSymptomTold(text)?.id }))
    const wrong = found.filter(({ meant, id }) => id !== undefined && id !== meant)
    const right = found.filter(({ meant, id }) => id === meant)
    console.log(`troubles: right ${right.length}, wrong ${wrong.length} of ${told.length}`)
    expect(right.length / told.length).toBeGreaterThanOrEqual(0.4)
    expect(wrong.length / told.length).toBeLessThanOrEqual(0.15)
  })
})

it.each([
  ['will it explode, the bottle is hissing', 'pressure'],
  ['can the fizzing jar explode?', 'fermenting'],
])('what may burst is answered as what it is, though it is asked: %s', async (text, symptom) => {
  expect(await talker().say(text)).toMatchObject({ command: 'trouble', data: { symptom } })
})

it.each([
  ['the meter shows 7 in a liqueur of 29%', 'hydrometer_odd'],
  ['it puckers my face like sucking on a lime, it is that tart', 'too_sour'],
  ['like drinking jam, far too sweet for us', 'too_sweet'],
  ['the mint’s gone black on me', 'leaves_went_black'],
  ['looks muddy since we sweetened it', 'cloudy_on_mixing'],
  ['pare latte da quando ho aggiunto lo sciroppo', 'cloudy_on_mixing'],
  ['it is dead sweet', 'too_sweet'],
  ['the jar’s leaking', 'leaking_lid'],
  ['a fly drowned in it', 'insects'],
  ['the bottles are broken', 'broken_glass'],
  ['little golden beads are swimming on my tangerine one', 'oil_ring'],
  ['greasy yellow globules floating about on the mandarin', 'oil_ring'],
  ['came out of the icebox like a popsicle', 'frozen'],
  ['the limoncello is like a snow cone now', 'frozen'],
  ['the lid went pfft at me when I twisted it', 'pressure'],
  ['ha fatto psss quando ho tolto il coperchio', 'pressure'],
  ['smells like my aunt’s pedicure', 'solvent'],
  ['it whiffs of felt tip', 'solvent'],
  ['the plum tingles on my tongue', 'fermenting'],
  ['it stinks of old socks', 'musty'],
  ['odora di calzini', 'musty'],
  ['my pear one looks like gravy', 'brown'],
  ['it takes the skin off my throat', 'harsh_hot'],
  ['orange goo under the rim', 'pink_orange_slime'],
  ['it smells of egg sandwich', 'rotten_egg'],
  ['like licking lemon pith', 'bitter'],
])('what went wrong is told in many words: %s', async (text, symptom) => {
  expect(await talker().say(text)).toMatchObject({ command: 'trouble', data: { symptom } })
})

it.each([
  ['can i fly to spain with a bottle', 'posting'],
  ['paper filter or a cloth', 'strain_cloth'],
  ['is it dangerous beside a gas ring', 'flame'],
])('a word that looks like one tells of no trouble: %s', async (text, entry) => {
  expect(await talker().say(text)).toMatchObject({ command: 'handbook', data: { entry } })
})

it('of two strengths that of the drink is taken, not what its hydrometer shows', async () => {
  const { read } = await talker().say('hydrometer shows 6 in a 28% liqueur')
  expect(read).toMatch(/strength:28%$/)
})

it.each([
  ['lemon_ginger', 'the ginger one looks muddy since i sweetened it', 'cloudy_on_mixing'],
  ['lemon', 'far too sickly, like eating jam', 'too_sweet'],
] as const)('when it was sweetened tells the time, and jam how sweet it is: %s %s', async (shelf, text, symptom) => {
  const one = await talkerFor({ after: null, shelf })
  expect(await one.say(text)).toMatchObject({ command: 'trouble', data: { symptom }, recorded: 0 })
})

it('asks why of so much water, in Italian too', async () => {
  const one = await talkerFor({ after: '/plan of:10 lemons spirit:1 l 95%' })
  expect((await one.say('tutta questa acqua a che serve?')).command).not.toBe('jar list')
})

it('what is named by the nails it is put on is varnish, and is not asked', async () => {
  const told = await talker().say('it reeks of a manicure')
  expect(told).toMatchObject({ command: 'trouble', data: { symptom: 'solvent' } })
  expect(told.read).toContain('yes:smells of nail varnish')
})

it.each(['can I make popsicles with limoncello', 'psst, 10 lemons and a litre of 95%', 'the quinces are rock hard'])(
  'what only sounds like it went wrong in nothing: %s',
  async (text) => {
    expect((await talker().say(text)).command).not.toBe('trouble')
  },
)

describe('what strangers tell in such words stands before what one word speaks for', () => {
  it.each([
    ['I left the jar standing in the blazing hot sun by the window all day', 'left_in_sun'],
    ['the quince has turned to a lump of jelly in its bottle, I can stand a spoon in it', 'gelled'],
  ])('%s', async (text, symptom) => {
    expect(await talker().say(text)).toMatchObject({ command: 'trouble', data: { symptom } })
  })

  it.each([
    ['where it is named', 'so sweet you could stand a spoon up in it, like a lump of jelly', 'too_sweet'],
    ['where it is not so much likelier', 'tastes of nothing but alcohol', 'harsh_hot'],
    ['where it is the same', 'the quince has turned to a lump of jelly in its bottle', 'gelled'],
  ] as const)('not %s', (_, text, than) => {
    expect(findLikelierSymptom(text, than)).toBeNull()
  })
})
