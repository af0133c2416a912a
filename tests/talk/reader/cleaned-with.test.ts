import { expect, it } from 'vitest'
import { talker } from './told.ts'

// What a solvent leaves in a jar: habit and common safety advice, no source.
it.each([
  'I used acetone to clean the jar',
  'washed the jar out with white spirit before the plums went in',
  'my husband rinsed the bottles with petrol',
  'can I degrease the funnel with turpentine?',
  'ho lavato il barattolo con l’acquaragia',
  'ho usato la benzina per pulire le bottiglie',
])('says what becomes of what is in it: %s', async (text) => {
  expect(await talker().say(text)).toMatchObject({ command: 'handbook', data: { entry: 'chemical_cleaned' } })
})

it.each(['I put white spirit in the jar', 'plums in a clean jar with white spirit', 'clean jar, petrol and lemons'])(
  'refuses what goes into it: %s',
  async (text) => {
    expect((await talker().say(text)).code).toBe('refused')
  },
)
