import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const said = (text: string) => talkerFor({ after: null, shelf: 'fair' }).then((talk) => talk.say(text))

// Sentences as makers type them; what each tells is common sense, no source.
it.each([
  ['the sloe is cloudy and smells of nail varnish', 'solvent', ['cloudy_on_mixing']],
  ['the sloe has gone cloudy and it fizzes', 'fermenting', ['cloudy_on_mixing']],
  ['the sloe is bitter, and something fizzes', 'fermenting', ['bitter']],
  ['my sloe went brown and it fizzes', 'fermenting', ['brown']],
  ['the sloe tastes of soap and also of vinegar', 'soapy_perfume', ['vinegar']],
  ['il mirto è torbido e frizza', 'fermenting', ['cloudy_on_mixing']],
  ['it is too sweet, and there is mould on the fruit', 'mould', ['too_sweet']],
  ['it is not cloudy but it fizzes', 'fermenting', []],
  ['the sloe is furry with mould on top', 'mould', []],
  ['the sloe is cloudy', 'cloudy_on_mixing', []],
])('drops no symptom: %s', async (text, symptom, also) => {
  const { command, data, recorded, read } = await said(text)
  expect({ command, symptom: data.symptom, also: data.also }).toEqual({ command: 'trouble', symptom, also })
  // What is told of a jar and is not harmless is kept with it.
  expect(recorded).toBe(/ jar:/.test(read ?? '') && symptom !== 'cloudy_on_mixing' ? 1 : 0)
})

it('keeps the jar that the first of two was told of', async () => {
  expect(await said('the sloe is bitter, and something fizzes')).toMatchObject({ read: /jar:sloe/ })
})
