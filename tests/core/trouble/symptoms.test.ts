import { expect, it, test } from 'vitest'
import { DomainError } from '../../../core/domain-error.ts'
import { isSymptomName, nearestSymptoms, parseSymptoms, symptomIn } from '../../../core/trouble/find-symptom.ts'
import { symptomIds, symptoms } from '../../../core/trouble/symptoms.ts'

it('knows fifty-two symptoms', () => {
  expect(symptomIds.length).toBe(52)
})

it('finds every symptom by each of its words, in both languages, and by its id', () => {
  const missed = symptomIds.flatMap((id) =>
    [id, ...symptoms[id].en, ...symptoms[id].it].flatMap((name) =>
      symptomIn(name) === id ? [] : [`${name}: ${symptomIn(name)} instead of ${id}`],
    ),
  )
  expect(missed).toEqual([])
})

// Said as makers say it; from memory, none of them is a name of the table.
test.each([
  ["it's gone really cloudy", 'cloudy_on_mixing'],
  ['My lemon went cloudy in the freezer', 'cloudy_in_cold'],
  ['it is way too sweet', 'too_sweet'],
  ['MOULD!!', 'mould'],
  ['biter', 'bitter'],
  ['there are crystals in the bottle', 'crystals'],
  ['è un po amaro', 'bitter'],
  ['the lid popped', 'fermenting'],
  ['it smells of vinegar now', 'vinegar'],
] as const)('reads “%s”', (said, id) => {
  expect(symptomIn(said)).toBe(id)
})

it.each([
  ['I put antifreeze in', 'wrong_spirit'],
  ['there is hemlock in it', 'unknown_plant'],
] as const)('takes what must not be in a jar for a trouble: “%s”', (said, id) => {
  expect(parseSymptoms(said)).toEqual([id])
})

// Phrases as makers type them; what each names is common sense, no source.
test.each([
  ['cloudy and smells of nail varnish', ['cloudy_on_mixing', 'solvent']],
  ['too sweet, bitter', ['too_sweet', 'bitter']],
  ['gone cloudy but also fizzing', ['cloudy_on_mixing', 'fermenting']],
  ['torbido e frizza', ['cloudy_on_mixing', 'fermenting']],
  ['mould + fizzing + bitter', ['mould', 'fermenting', 'bitter']],
  ['slimy and thick', ['gelled']],
  ['hazy when cold and clear at room temperature', ['cloudy_in_cold']],
  ['cloudy, cloudy', ['cloudy_on_mixing']],
] as const)('names all that “%s” tells', (said, ids) => {
  expect(parseSymptoms(said)).toEqual(ids)
  expect(isSymptomName(said)).toBe(true)
  expect(isSymptomName(`${said} and a green parrot`)).toBe(false)
})

it('asks back where nothing is known, with what comes nearest', () => {
  const thrown = (() => {
    try {
      parseSymptoms('tastes of old socks')
    } catch (error) {
      return error
    }
    return null
  })()
  expect(thrown).toBeInstanceOf(DomainError)
  expect((thrown as DomainError).problem).toBe('unknown_symptom')
  expect(symptomIn('')).toBeNull()
  expect(symptomIn('the quince')).toBeNull()
  expect(nearestSymptoms('xyzzyplugh')).toEqual([])
  expect(nearestSymptoms('smells of feet').length).toBeGreaterThan(0)
})
