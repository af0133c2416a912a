import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const said = async (text: string, shelf: 'lemon_bottled' | 'lemon_strained') =>
  (await talkerFor({ after: null, shelf })).say(text)

it.each([
  'so what have we still got?',
  'anything left?',
  'what’s left in the larder',
  'what do we have left to drink',
  'what is there in the cupboard?',
  'che cosa ci resta?',
  'cosa abbiamo ancora in dispensa?',
])('is told by the bottles where there are some: %s', async (text) => {
  expect((await said(text, 'lemon_bottled')).read).toBe('/bottles')
})

it.each(['what have I left to do?', 'what do I have to buy?', 'what do I have to do now'])(
  'is another question: %s',
  async (text) => {
    expect((await said(text, 'lemon_bottled')).read).not.toBe('/bottles')
  },
)

it('asks for no bottles where there are none', async () => {
  expect((await said('what have I got left?', 'lemon_strained')).read).not.toBe('/bottles')
})
