import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

/** As makers would say it; none of these stands in the corpus. */
describe.each([
  ['lemon_strained', 'how much water and sugar for 450 ml of lemon at 86', '/syrup infusion:450 ml strength:86%'],
  ['lemon_bottled', 'how much sugar for 1.2 litres of lemon at 80%', '/syrup infusion:1.2 litres strength:80%'],
  ['lemon_ginger', 'sugar and water for 650 ml of ginger at 58', '/syrup infusion:650 ml strength:58%'],
  ['lemon_strained', 'quanto zucchero per 600 ml di limone a 87', '/syrup infusion:600 ml strength:87%'],
  ['lemon_strained', 'how much sugar and water for the lemon at 28', '/syrup jar:lemon to-strength:28%'],
] as const)('%s: %s', (shelf, text, read) => {
  it(`is ${read}`, async () => {
    const one = await talkerFor({ after: null, shelf })
    expect(await one.say(text)).toMatchObject({ read, code: null })
  })
})

it('is worked out anew after another syrup', async () => {
  const one = await talkerFor({ after: null })
  await one.say('/syrup infusion:900 ml strength:33%')
  expect((await one.say('how much sugar for 600 ml at 80')).read).toBe('/syrup infusion:600 ml strength:80%')
})
