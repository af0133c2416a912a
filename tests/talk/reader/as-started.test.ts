import { expect, it } from 'vitest'
import { talker } from './told.ts'

const begun = async () => {
  const one = talker()
  await one.say('1 lb of sloes and a 700 ml bottle of gin')
  await one.say('start it')
  return one
}

// Ours, no source.
it.each([
  'I put in 1 lb of sloes and a 700 ml bottle of gin',
  'put 1 lb sloes in with 700 ml gin',
  'added 1 lb of sloes and 700 ml of gin',
  'I added 1 lb of sloes',
])('asks whether what a jar was started with goes in once more: %s', async (text) => {
  const told = await (await begun()).say(text)
  expect(told).toMatchObject({ code: 'question', recorded: 0 })
  expect(told.choices).toEqual(['/jar show sloes', expect.stringMatching(/^\/jar add sloes of:1 lb sloes/)])
})

it.each([
  ['added another 1 lb of sloes', 'of:1 lb sloes'],
  ['I added 2 oz of sloes', 'of:2 oz sloes'],
  ['put in 3 cloves', 'of:3 cloves'],
])('adds what is more, or something else: %s', async (text, options) => {
  expect(await (await begun()).say(text)).toMatchObject({ read: `/jar add sloes ${options}`, recorded: 1 })
})
