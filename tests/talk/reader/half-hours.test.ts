import { expect, it } from 'vitest'
import { talker } from './told.ts'

// Hours as they are said in Britain; common practice, no source.
it.each([
  'remind me at half past seven in the evening',
  'can you remind me at half past eight',
  'remind me at half seven in the evening',
  'nudge me around half past nine in the morning',
])('takes an hour for half of no recipe: %s', async (text) => {
  const one = talker()
  await one.say('5 oranges in a litre of vodka')
  await one.say('start it')
  const told = await one.say(text)
  expect(told.command).not.toBe('plan')
  expect(told.read ?? '').not.toContain('oranges spirit')
})

it.each(['half of it', 'make half', 'halve it'])('still halves a plan: %s', async (text) => {
  const one = talker()
  await one.say('10 oranges in a litre of vodka')
  expect((await one.say(text)).read).toBe('/plan of:5 oranges spirit:0.5 litre vodka 40%')
})
