import { expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

/** Two things in one sentence, and the lines that they come to, in order; a danger is shown first. */
const BOTH: readonly (readonly [shelf: Shelf, text: string, reads: readonly string[]])[] = [
  // What is left and until when is said of bottles that are given.
  [
    'lemon_bottled',
    'I gave two bottles of the lemon away, what’s left and until when is it good?',
    ['/bottles lemon given:2'],
  ],
  ['lemon_bottled', 'gave away two bottles of the lemon, how many are left?', ['/bottles lemon given:2']],
  [
    'lemon_ginger',
    'strained the ginger, 650 ml, and shook the lemon',
    ['/jar strain ginger measured:650 ml', '/jar shake lemon'],
  ],
  ['lemon_ginger', 'tasted the ginger, 4 stars, and shook it', ['/jar taste ginger rating:4', '/jar shake ginger']],
  ['lemon_ginger', 'shook the lemon and the ginger', ['/jar shake lemon', '/jar shake ginger']],
  [
    'lemon_ginger',
    'ho filtrato lo zenzero, 640 ml, e scosso il limone',
    ['/jar strain ginger measured:640 ml', '/jar shake lemon'],
  ],
  [
    'lemon',
    'strained the lemon, 920 ml at 86, and stirred in 500 g sugar and 1.5 l water',
    ['/jar strain lemon measured:920 ml strength:86%', '/jar sweeten lemon sugar:500 g water:1.5 l'],
  ],
  [
    'lemon',
    'strained the lemon, 900 ml at 85. and how much syrup for 28%?',
    ['/jar strain lemon measured:900 ml strength:85%', '/syrup jar:lemon to-strength:28%'],
  ],
  [
    'fair',
    'shook the sloe then bottled the orange, 3 x 500',
    ['/jar shake sloe', '/jar bottle orange bottles:3 x 500 ml'],
  ],
  [
    'lemon_ginger',
    'shook the lemon jar and the ginger jar yesterday',
    ['/jar shake lemon when:yesterday', '/jar shake ginger when:yesterday'],
  ],
  [
    'lemon_ginger',
    'shook the lemon yesterday and the ginger on friday',
    ['/jar shake lemon when:yesterday', '/jar shake ginger when:friday'],
  ],
  [
    'lemon_ginger',
    'shook the lemon and the ginger, the lid of the ginger is bulging',
    ['/trouble lid bulging jar:ginger', '/jar shake lemon', '/jar shake ginger'],
  ],
  [
    'lemon_ginger',
    'shook the lemon and the ginger, there is mould on the ginger',
    ['/trouble mould jar:ginger', '/jar shake lemon', '/jar shake ginger'],
  ],
  [
    'lemon_ginger',
    "shook the lemon, didn't taste the ginger because it has mould",
    ['/trouble mould jar:ginger', '/jar shake lemon'],
  ],
  [
    'lemon_ginger',
    "shook the lemon but the ginger isn't right, it has gone mouldy",
    ['/trouble mould jar:ginger', '/jar shake lemon'],
  ],
  ['lemon_ginger', 'shook the lemon, not the ginger, it has mould', ['/trouble mould jar:ginger', '/jar shake lemon']],
]

it.each(BOTH)('%s: %s', async (shelf, text, reads) => {
  const one = await talkerFor({ after: null, shelf })
  const told = await one.say(text)
  expect([told, ...told.also].map(({ read }) => read)).toEqual(reads)
  expect([told, ...told.also].map(({ code }) => code)).toEqual(reads.map(() => null))
})

it('undoes each of them', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  expect(await one.say('shook the ginger and strained the lemon, 925 ml')).toMatchObject({ recorded: 2 })
  expect(await one.say('/jar undo ginger')).toMatchObject({ code: null, recorded: 1 })
  expect(await one.say('/jar undo lemon')).toMatchObject({ code: null, recorded: 1 })
})

it.each([
  'shook the lemon, ginger not yet',
  'shook the lemon but not the ginger',
  'scosso il limone ma non lo zenzero',
])('%s: of the other nothing is written down', async (text) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  expect(await one.say(text)).toMatchObject({ read: '/jar shake lemon', recorded: 1, also: [] })
})

it('drops no amount that is told of each', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  expect(await one.say('shook the lemon and the ginger with 500 g sugar')).toMatchObject({
    read: '/jar shake lemon',
    code: 'question',
    recorded: 0,
    also: [{ read: '/jar shake ginger', code: 'question' }],
  })
})

it('takes no jar for one that was not shaken where something else is denied', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  expect(await one.say('shook the lemon and the ginger, no mould on either')).toMatchObject({ recorded: 0, also: [] })
})

it.each(['should i shake the ginger and strain the lemon?', 'ho filtrato, 930 ml a 85, come arrivo a 30?'])(
  '%s: nothing is written down',
  async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    expect(await one.say(text)).toMatchObject({ recorded: 0 })
  },
)

it('asks of the one what it lacks, and does the other', async () => {
  const one = await talkerFor({ after: null, shelf: 'fair' })
  const told = await one.say('shook the sloe and bottled the orange')
  expect(told).toMatchObject({
    read: '/jar shake sloe',
    code: null,
    also: [{ code: 'question', command: 'jar bottle' }],
  })
  expect(await one.say('3 x 500')).toMatchObject({ read: '/jar bottle orange bottles:3 x 500 ml', recorded: 1 })
})

it.each([
  'pour the lemon into the ginger',
  'combine the lemon and the ginger',
  'mix the lemon into the ginger',
  'pour the two jars together',
])('asks before two jars are made one, with the line: %s', async (text) => {
  const told = await (await talkerFor({ after: null, shelf: 'lemon_ginger' })).say(text)
  expect(told.recorded).toBe(0)
  expect(told.choices).toHaveLength(1)
  expect(told.choices[0]).toMatch(/^\/jar combine (?:lemon with:ginger|ginger with:lemon)$/)
})
