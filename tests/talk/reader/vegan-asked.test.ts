import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

it.each([
  ['is it vegan', 'vegan'],
  ['can vegans drink the sloe gin?', 'vegan'],
  ['lo può bere un vegano?', 'vegan'],
  ['how do I make a vegan cream liqueur', 'plant_milk'],
])('answers who eats nothing of an animal: %s', async (text, entry) => {
  for (const shelf of [undefined, 'fair'] as const) {
    const one = await talkerFor({ after: null, ...(shelf && { shelf }) })
    expect(await one.say(text)).toMatchObject({ command: 'handbook', data: { entry }, recorded: 0 })
  }
})
