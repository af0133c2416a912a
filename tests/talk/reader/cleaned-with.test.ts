import { expect, it } from 'vitest'
import { talker } from './told.ts'

// What a solvent or a cleaner leaves in a jar: habit and common safety advice, no source.
it.each([
  'I used acetone to clean the jar',
  'washed the jar out with white spirit before the plums went in',
  'my husband rinsed the bottles with petrol',
  'can I degrease the funnel with turpentine?',
  'the jar had been soaked in drain cleaner',
  'used oven cleaner to get the jar clean',
  'ho lavato il barattolo con l’acquaragia',
  'ho usato la benzina per pulire le bottiglie',
])('says what becomes of what is in it: %s', async (text) => {
  expect(await talker().say(text)).toMatchObject({ command: 'handbook', data: { entry: 'chemical_cleaned' } })
})

it.each([
  'I used bleach to clean the jar before the lemons went in',
  'the bottles were sterilised with bleach',
  'my wife bleached the jar last week, is it ok?',
  'cleaned the big jar with descaler, then plums and vodka',
  'left a dishwasher tablet in the jar overnight',
  'washed the jar with dishwasher powder and put the cherries in',
  'ho pulito il vaso con la candeggina prima di metterci i limoni',
  'il barattolo l’ho lavato con la varechina',
  'ho usato l’anticalcare per lavare le bottiglie',
  'descaler, then plums and gin',
  'bleach first and then the cherries went in',
  'a splash of limescale remover, then 500 g sloes and a litre of gin',
  'candeggina, poi i limoni e l’alcol',
])('asks of a kitchen’s cleaner whether it was rinsed: %s', async (text) => {
  expect(await talker().say(text)).toMatchObject({ command: 'handbook', data: { entry: 'bleach_cleaned' } })
})

it.each([
  'I put white spirit in the jar',
  'plums in a clean jar with white spirit',
  'clean jar, petrol and lemons',
  'I put bleach in the jar with the lemons',
  'a clean jar, lemons and 20 ml of bleach',
])('refuses what goes into it: %s', async (text) => {
  expect((await talker().say(text)).code).toBe('refused')
})

it.each([
  'washed the jar with bicarbonate',
  'cleaned the jar with washing-up liquid',
  'rinsed the jars in the dishwasher',
  'ho lavato i vasi in lavastoviglie',
])('is not said of what anybody washes with: %s', async (text) => {
  expect((await talker().say(text)).data.entry).not.toMatch(/bleach_cleaned|chemical_cleaned/)
})
