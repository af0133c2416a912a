import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const said = async (text: string) => (await talkerFor({ after: null })).say(text)

// 20 people x 2 glasses x 40 ml = 1.6 l, four bottles of 500 ml; a small glass of 40 ml: common practice, no source.
it.each([
  ['enough limoncello for 20 people, two small glasses each', '4 x 500 ml'],
  ['limoncello for 20 people', '2 x 500 ml'],
  ['sloe gin for 30 guests, three 50 ml glasses each', '9 x 500 ml'],
  ['limoncello per 20 persone, due bicchierini a testa', '4 x 500 ml'],
])('%s', async (text, bottles) => {
  expect(await said(text)).toMatchObject({ call: { path: 'plan', options: { bottles } }, code: null })
})

it.each(['10 lemons and a litre of vodka', 'limoncello for 6 bottles'])('counts nobody: %s', async (text) => {
  expect((await said(text)).call?.options.bottles ?? '').not.toContain('500 ml')
})
