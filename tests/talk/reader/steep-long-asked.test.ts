import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

it.each([
  ['is 2 months on the lemons too long', 'lemons'],
  ['is a week enough for ginger', 'ginger'],
  ['is ten days enough on the lemons', 'lemons'],
  ['would 3 months be too long for sloes', 'sloes'],
  ['due mesi sono troppi per i limoni?', 'limoni'],
  ['sono poche due settimane per lo zenzero?', 'zenzero'],
  ['a month on coffee beans, too much?', 'coffee beans'],
])('%s is answered by how long %s are left in', async (said, of) => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  const { call, recorded } = await one.say(said)
  expect(call).toEqual({ path: 'botanical', options: { of } })
  expect(recorded).toBe(0)
})

it('is the jar’s where no plant is named', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  expect((await one.say('is two months too long for it?')).call).toMatchObject({ path: 'jar show' })
})
