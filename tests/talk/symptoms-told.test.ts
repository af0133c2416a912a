import { describe, expect, it } from 'vitest'
import { findSymptomTold } from '../../bot/talk/handbook/find-symptom-told.ts'
import { readOffTopic, sentencesOf } from './corpus.ts'
import { talker } from './reader/told.ts'

describe('a trouble is found by the words it is told in', () => {
  it.each([
    ['a bluish beard on the fruit', 'mould'],
    ['overnight it turned to sorbet in the freezer', 'frozen'],
    ['it reeks of a nail salon', 'solvent'],
    ['it has gone like a jam', 'gelled'],
    ['one drop a minute through the paper', 'stuck_filter'],
    ['the cream has turned to cottage cheese', 'curdled'],
    ['è così dolce che non si beve', 'too_sweet'],
    ['una peluria bianca sopra', 'mould'],
  ])('%s', (text, id) => {
    expect(findSymptomTold(text)?.id).toBe(id)
  })

  it('for no sentence of something else', () => {
    const answered = readOffTopic().filter(({ text }) => findSymptomTold(text) !== null)
    console.log(`troubles off topic: ${answered.length} of ${readOffTopic().length}`)
    expect(answered).toEqual([])
  })

  it('for most of those that were written down', () => {
    const told = (['own-1', 'own-2'] as const)
      .flatMap(sentencesOf)
      .filter(({ meaning }) => meaning.symptom !== undefined)
    const found = told.map(({ text, meaning }) => ({ text, meant: meaning.symptom, id: findSymptomTold(text)?.id }))
    const wrong = found.filter(({ meant, id }) => id !== undefined && id !== meant)
    const right = found.filter(({ meant, id }) => id === meant)
    console.log(`troubles: right ${right.length}, wrong ${wrong.length} of ${told.length}`)
    expect(right.length / told.length).toBeGreaterThanOrEqual(0.4)
    expect(wrong.length / told.length).toBeLessThanOrEqual(0.15)
  })
})

it.each([
  ['will it explode, the bottle is hissing', 'pressure'],
  ['can the fizzing jar explode?', 'fermenting'],
])('what may burst is answered as what it is, though it is asked: %s', async (text, symptom) => {
  expect(await talker().say(text)).toMatchObject({ command: 'trouble', data: { symptom } })
})
