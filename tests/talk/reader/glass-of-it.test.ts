import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

/** As makers would say it; none of these stands in the corpus. */
describe.each([
  ['/plan of:3 g dried chilli spirit:700 ml 60%', '30%'],
  ['/plan of:8 oranges spirit:1 l 60% to-strength:26%', '26%'],
  ['/syrup infusion:800 ml strength:80% to-strength:27% to-sweetness:200 g/L', '27%'],
])('after %s', (line, strength) => {
  it.each([
    ['how much alcohol in a 30 ml pour', '30 ml'],
    ['how strong is a 20 ml shot of that', '20 ml'],
    ['what’s in a 45 ml measure', '45 ml'],
    ['how many units in a double', '50 ml'],
    ['how much alcohol per 60 ml', '60 ml'],
    ['how much alcohol in a 2 oz pour', '2 fl oz'],
    ['how much alcohol in a bottle of it', '500 ml'],
    ['quanto alcol in un bicchierino da 35 ml', '35 ml'],
  ])('%s is of a glass of it', async (text, pour) => {
    const one = talker()
    await one.say(line)
    expect(await one.say(text)).toMatchObject({ read: `/serving pour:${pour} strength:${strength}`, code: null })
  })
})

it('asks how strong it is where nothing was worked out', async () => {
  expect(await talker().say('how much alcohol in a 30 ml pour')).toMatchObject({ code: 'question' })
})
