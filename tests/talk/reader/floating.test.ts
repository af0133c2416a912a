import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const say = async (text: string) => (await talkerFor({ after: null, shelf: 'fair' })).say(text)

it.each([
  'something’s drifting about in the sloe',
  'summat floats in it',
  'there are things swimming in the orange',
  'what’s floating in my jar',
  'roba che galleggia nel limone',
  'c’è qualcosa che nuota',
])('something swims in it: %s', async (text) => {
  const { data, command } = await say(text)
  expect([command, data.symptom]).toEqual(['trouble', 'floating_bits'])
})

it.each([
  'the damsons are sticking out of the gin',
  'orange peel keeps poking out above the spirit',
  'my plums aren’t covered',
  'the ginger won’t stay under',
  'le ciliegie spuntano dalla grappa',
  'i mirtilli non restano sotto',
])('plants stand out of it: %s', async (text) => {
  const { data, command } = await say(text)
  expect([command, data.entry]).toEqual(['handbook', 'keep_under'])
})

it('says mould where it is told, whatever stands out', async () => {
  expect((await say('there’s fur on the fruit sticking out of the vodka')).data.symptom).toBe('mould')
})
