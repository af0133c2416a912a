import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const toldAfter = async (shelf: 'lemon_strained' | 'lemon_sweetened', first: string, text: string) => {
  const one = await talkerFor({ after: null, shelf })
  if (first !== '') await one.say(first)
  return one.say(text)
}

// Ours, no source.
describe('a sweetening that was told wrongly', () => {
  it.each([
    ['added a cup of sugar', 'no, it was two cups', '/jar correct lemon sugar:2 cups'],
    ['added a cup of sugar and 2 cups of water', 'sorry, it was 3 cups of sugar', '/jar correct lemon sugar:3 cups'],
    [
      'stirred in 10 tablespoons of sugar and a pint of water',
      'actually it was 12 tablespoons',
      '/jar correct lemon sugar:12 tablespoons',
    ],
    ['sweetened with 500 g sugar and 1.5 l water', 'sorry, it was 1.6 l', '/jar correct lemon water:1.6 l'],
    ['sweetened with 500 g sugar and 1.5 l water', 'oops, the water was 905 ml', '/jar correct lemon water:905 ml'],
  ])('is put right where its measure says which it is: %s / %s', async (first, text, read) => {
    expect(await toldAfter('lemon_strained', first, text)).toMatchObject({ read, recorded: 1 })
  })

  it('is asked about where both were told in that measure', async () => {
    expect(
      await toldAfter('lemon_strained', 'added a cup of sugar and 2 cups of water', 'no, it was 3 cups'),
    ).toMatchObject({
      code: 'question',
      recorded: 0,
      choices: ['/jar correct lemon sugar:3 cups', '/jar correct lemon water:3 cups'],
    })
  })

  it.each(['the number was wrong, it was 905 ml', 'sorry, it was 903 ml', 'oops, it was 93 cl'])(
    'is asked about where what was strained is nearer: %s',
    async (text) => {
      const told = await toldAfter('lemon_sweetened', '', text)
      const amount = /\d+ [cm]l/.exec(text)![0]
      expect(told).toMatchObject({ code: 'question', recorded: 0 })
      expect(told.choices).toEqual([
        expect.stringMatching(new RegExp(`^/jar correct lemon entry:\\d+ measured:${amount}$`)),
        `/jar correct lemon water:${amount}`,
      ])
    },
  )
})

// A cupful is a cup, common practice, no source.
it.each([
  ['threw in a cupful of sugar', '/jar sweeten lemon sugar:1 cupful'],
  ['stirred in 10 tablespoonfuls of sugar', '/jar sweeten lemon sugar:10 tablespoonfuls'],
])('takes so many fulls of a measure for so many of it: %s', async (text, read) => {
  expect(await toldAfter('lemon_strained', '', text)).toMatchObject({ read, recorded: 1 })
})

it.each(['it was 750 actually not 800', 'the lemon is 750 actually, not 800', 'it was 750 ml actually not 800 ml'])(
  'what was strained is put right by what is told before the number that is not: %s',
  async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say('strained the lemon, 800 ml')
    const { call, recorded } = await one.say(text)
    expect(call?.options).toMatchObject({ measured: '750 ml' })
    expect(recorded).toBe(1)
  },
)
