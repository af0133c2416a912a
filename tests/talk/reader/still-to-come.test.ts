import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const onTheShelf = () => talkerFor({ after: null, shelf: 'lemon_ginger' })

// As makers say it; no source. Today is a Sunday.
it.each([
  'remind me to drop two cloves into the lemon on thursday',
  'nudge me on tuesday to lift the peel out of the lemon',
  'can you poke me to put vanilla in the ginger on friday',
  'add a bay leaf to the lemon on wednesday',
  'moving the lemon to the pantry on tuesday',
  'must add the cloves to the lemon on friday',
  'shall pop a vanilla pod in the ginger',
  'i wish i had strained the lemon last week',
  'ricordami di mettere due chiodi di garofano nel limone giovedì',
  'aggiungo una stecca di vaniglia allo zenzero venerdì',
])('what is wished, or still to come, is not written down: %s', async (text) => {
  expect(await (await onTheShelf()).say(text)).toMatchObject({ recorded: 0 })
})

it.each([
  ['remind me to drop two cloves into the lemon on thursday', '/jar later lemon until:thursday'],
  ['nudge me on tuesday to lift the peel out of the lemon', '/jar later lemon until:tuesday'],
  ['moving the lemon to the pantry on tuesday', '/jar later lemon until:tuesday'],
])('what reminders can do of it is said: %s', async (text, line) => {
  expect((await (await onTheShelf()).say(text)).choices).toContain(line)
})

it.each([
  ['moved the lemon to the pantry on tuesday', '/jar note lemon where:pantry when:tuesday'],
  ['added a vanilla pod to the lemon on wednesday', '/jar add lemon of:1 vanilla pod when:wednesday'],
])('what is told as done is: %s', async (text, read) => {
  const told = await (await onTheShelf()).say(text)
  expect(told.read).toBe(read)
  expect(told.recorded).toBeGreaterThan(0)
})
