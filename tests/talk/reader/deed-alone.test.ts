import { describe, expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

const onShelf = (shelf: Shelf) => talkerFor({ after: null, shelf })

describe('a deed and nothing else, with one jar', () => {
  it.each([
    ['bottled it', '/jar bottle lemon'],
    ['bottled it, 5 x 500 ml', '/jar bottle lemon bottles:5 x 500 ml'],
    ['bottled them all', '/jar bottle lemon'],
    ['put it in bottles', '/jar bottle lemon'],
    ['sweetened it', '/jar sweeten lemon'],
    ['filtered it', '/jar filter lemon'],
    ['opened it', '/jar open lemon'],
    ['l’ho imbottigliato', '/jar bottle lemon'],
    ['l’ho zuccherato', '/jar sweeten lemon'],
  ])('%s: says that it is not strained yet', async (text, read) => {
    const one = await onShelf('lemon')
    expect(await one.say(text)).toMatchObject({ read, code: 'wrong_stage', recorded: 0 })
  })

  it.each([
    ['gave it away', 'lemon_bottled', '3', '/bottles lemon given:3'],
    ['drank it', 'lemon_bottled', '1', '/bottles lemon opened:1'],
    ['tasted it', 'lemon', '4 stars', '/jar taste lemon rating:4'],
    ['moved it', 'lemon', 'to the cellar', '/jar note lemon where:cellar'],
    ['moved it', 'lemon', 'the shed', '/jar note lemon where:shed'],
    ['added sugar to it', 'lemon', '50 g', '/jar add lemon sugar:50 g'],
  ] as const)('%s: asks for what it lacks', async (text, shelf, answer, read) => {
    const one = await onShelf(shelf)
    expect(await one.say(text)).toMatchObject({ code: 'question', recorded: 0 })
    expect(await one.say(answer)).toMatchObject({ read, code: null, recorded: 1 })
  })

  it.each([
    ['shook it', 'lemon', '/jar shake lemon'],
    ['strained it', 'lemon', '/jar strain lemon'],
    ['strained it', 'lemon_sweetened', '/jar filter lemon'],
    ['filtered it yesterday', 'lemon_sweetened', '/jar filter lemon when:yesterday'],
  ] as const)('%s: writes it down', async (text, shelf, read) => {
    expect(await (await onShelf(shelf)).say(text)).toMatchObject({ read, code: null, recorded: 1 })
  })
})

it.each([
  ['bottled it', 'lemon_ginger', ['/jar bottle lemon', '/jar bottle ginger']],
  ['filtered it', 'fair', ['/jar filter lemon', '/jar filter orange', '/jar filter raspberry']],
  ['tasted them', 'lemon_ginger', ['/jar taste lemon', '/jar taste ginger']],
] as const)('asks which jar, where none was spoken of just before: %s', async (text, shelf, choices) => {
  const one = await onShelf(shelf)
  await one.say('what’s on?')
  expect(await one.say(text)).toMatchObject({ code: 'question', choices, recorded: 0 })
})

describe('of several jars the one that was spoken of just before', () => {
  it.each([
    ['fair', 'show me the orange', 'filtered it', '/jar filter orange'],
    [
      'lemon_ginger',
      'how’s the ginger doing?',
      'strained it, 640 ml at 57',
      '/jar strain ginger measured:640 ml strength:57%',
    ],
    ['lemon_ginger', 'show me the ginger', 'shook it', '/jar shake ginger'],
  ] as const)('%s: %s, %s', async (shelf, before, text, read) => {
    const one = await onShelf(shelf)
    await one.say(before)
    expect(await one.say(text)).toMatchObject({ read, code: null, recorded: 1 })
  })

  it('but asks behind another answer, or where it is in another stage', async () => {
    const one = await onShelf('lemon_ginger')
    await one.say('show me the ginger')
    await one.say('how do I strain?')
    expect(await one.say('shook it')).toMatchObject({ code: 'question', recorded: 0 })
    await one.say('show me the ginger')
    expect(await one.say('bottled it, 5 x 500 ml')).toMatchObject({ recorded: 0 })
  })

  it('of which a bottle was drunk', async () => {
    const one = await talkerFor({ after: null })
    for (const name of ['lemon', 'plum'])
      for (const line of [
        `/jar start ${name} of:10 lemons spirit:1 l 95% when:100 days ago`,
        `/jar strain ${name} measured:930 ml strength:87% when:80 days ago`,
        `/jar sweeten ${name} sugar:510 g water:1.5 l when:80 days ago`,
        `/jar bottle ${name} bottles:5 x 500 ml when:78 days ago`,
      ])
        expect(await one.say(line), line).toMatchObject({ code: null })
    await one.say('how’s the lemon?')
    expect(await one.say('drank one')).toMatchObject({ read: '/bottles lemon opened:1', recorded: 1 })
    await one.say('how do I strain?')
    expect(await one.say('drank one')).toMatchObject({ code: 'question', recorded: 0 })
  })
})

it.each(['should I have bottled it', 'filtered it?', 'never moved it', 'if I bottled it', 'will be bottled'])(
  'is told by no other words: %s',
  async (text) => {
    expect(await (await onShelf('lemon_sweetened')).say(text)).toMatchObject({ recorded: 0 })
  },
)

it.each([
  ['tasted it, sharp, 3 out of 5', '/jar taste lemon rating:3 note:sharp'],
  ['tasted the lemon: lovely and round', '/jar taste lemon note:lovely and round'],
  ['had a sip, not there yet', '/jar taste lemon note:not there yet'],
  ['tasted it, 4, lovely', '/jar taste lemon rating:4 note:lovely'],
  ['I tasted it yesterday, very bitter', '/jar taste lemon when:yesterday note:very bitter'],
])('%s: keeps how it tasted', async (text, read) => {
  expect(await (await onShelf('lemon')).say(text)).toMatchObject({ read, code: null, recorded: 1 })
})
