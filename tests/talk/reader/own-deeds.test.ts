import { expect, it } from 'vitest'
import { talker } from './told.ts'

const SHELF = [
  '/jar start sloe of:400 g sloes spirit:700 ml 40% when:20 days ago',
  '/jar start ginger of:300 g ginger spirit:1 l 40% when:5 days ago',
]

async function heardOf(text: string) {
  const one = talker()
  for (const line of SHELF) await one.say(line)
  const told = await one.say(text)
  return [told, ...told.also].map(({ read, code }) => read ?? code)
}

const APART: readonly (readonly [text: string, heard: readonly string[]])[] = [
  // A clause with a deed of its own is of the jar that it names, and no plant of the one that is begun.
  [
    'I started 500 g of damsons in a litre of 40% vodka and moved the ginger to the cellar',
    ['/jar start of:500 g damsons spirit:1 litre vodka 40%', '/jar note ginger where:cellar'],
  ],
  [
    'started 400 g of cherries in 700 ml of 40% brandy this morning, and put the sloe in the fridge',
    ['/jar start of:400 g cherries spirit:700 ml brandy 40%', '/jar note sloe where:fridge'],
  ],
  [
    'ho iniziato 500 g di prugne in un litro di vodka al 40% e ho messo lo zenzero in cantina',
    ['/jar start of:500 g prugne spirit:1 litro vodka 40%', '/jar note ginger where:cantina'],
  ],
  [
    'I started 500 g of damsons in a litre of 40% vodka and shook the sloe',
    ['/jar start of:500 g damsons spirit:1 litre vodka 40%', '/jar shake sloe'],
  ],
  // What is begun is what `it` is.
  [
    'I started 500 g of damsons in a litre of 40% vodka and remind me Sunday to shake it',
    ['/jar start of:500 g damsons spirit:1 litre vodka 40%', '/jar later damsons until:sunday'],
  ],
  [
    'I started 500 g of plums in a litre of 40% vodka and put it in the cellar',
    ['/jar start of:500 g plums spirit:1 litre vodka 40%', '/jar note plums where:cellar'],
  ],
  [
    'strained the sloe, 650 ml, and put it in the fridge',
    ['/jar strain sloe measured:650 ml', '/jar note sloe where:fridge'],
  ],
  ['shook the ginger and it’s in the freezer', ['/jar shake ginger', '/jar note ginger where:freezer']],
  // A taste, and for how long it is let be.
  ['tasted the sloe, needs another week', ['/jar later sloe until:in 1 week', '/jar taste sloe']],
  [
    'tasted the sloe, 3 stars, give it two more weeks',
    ['/jar taste sloe rating:3', '/jar later sloe until:in 2 weeks'],
  ],
  // Nothing is recorded of another jar where there is none that it could be of.
  ['I shook the damsons and tasted them, a 4, bit thin', ['/jar shake damsons', 'not_understood']],
  [
    'start 500 g of damsons in a litre of 40% vodka and remind me Sunday to shake it',
    ['/plan of:500 g damsons spirit:1 litre vodka 40%', 'not_understood'],
  ],
  ['shake the sloe and take the ginger out of the fridge', ['/jar shake sloe', 'not_understood']],
  ['shook the sloe and took the ginger out of the fridge', ['/jar shake sloe', 'not_understood']],
]

it.each(APART)('%s', async (text, heard) => {
  expect(await heardOf(text)).toEqual(heard)
})

it('names what it left out, and records nothing of another jar', async () => {
  const one = talker()
  await one.say(SHELF[0]!)
  const before = (await one.store.read('local')).jars[0]!.entries.length
  const { also = [] } = await one.hear('I shook the damsons and tasted them, a 4')
  expect(also.map(({ outcome }) => !outcome.ok && outcome.error.values)).toEqual([
    { words: 'tasted them, a 4', isOfNone: true },
  ])
  expect((await one.store.read('local')).jars[0]!.entries.length).toBe(before)
})

it.each([
  ['the ginger needs another 2 weeks', 'in 2 weeks'],
  ['ginger, needs three more days', 'in 3 days'],
  ['give the ginger one more month', 'in 1 month'],
])('puts off, and leaves nothing out: %s', async (text, until) => {
  const one = talker()
  for (const line of SHELF) await one.say(line)
  const { outcome, read } = await one.hear(text)
  expect(read).toBe(`/jar later ginger until:${until}`)
  expect('reply' in outcome && outcome.reply.notes.filter(({ key }) => key === 'left_out')).toEqual([])
})

it('takes the hour of a start for its hour', async () => {
  expect(await heardOf('I started 500 g of damsons in a litre of 40% vodka at 4am today')).toEqual([
    '/jar start of:500 g damsons spirit:1 litre vodka 40%',
  ])
})

it.each(['topped off the sloe with 100 ml of vodka', 'I topped the sloe off with 100 ml of vodka'])(
  '%s',
  async (text) => {
    expect(await heardOf(text)).toEqual(['/jar add sloe spirit:100 ml vodka 40% as:top-up'])
  },
)
