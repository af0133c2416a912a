import { expect, test } from 'vitest'
import { talker } from './told.ts'

// Told on 29 November 2026.
test.each([
  ['2 lb cherries and a fifth of bourbon, steep till Christmas', / days:26 days$/],
  ['2 kg plums and 2 litres of vodka, let them soak until 20 December', / days:21 days$/],
  ['2 kg di prugne e 2 litri di vodka, da macerare fino a Natale', / days:26 days$/],
  ['10 lemons and a litre of 95, ready by Easter', / ready-by:/],
  ['10 lemons and a litre of 95 for Easter', / ready-by:/],
])('“%s”: up to the day on which it is strained, or ready', async (said, read) => {
  expect((await talker().say(said)).read).toMatch(read)
})
