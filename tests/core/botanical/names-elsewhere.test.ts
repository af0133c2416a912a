import { expect, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { findBotanical } from '../../../core/botanical/find/find.ts'
import { asksElsewhere, namesElsewhere } from '../../../core/botanical/names/foreign-names.ts'
import { byAskWord, byName, keyOf } from '../../../core/botanical/names/name-index.ts'
import { allRefusedNames } from '../../../core/botanical/refuse/all-refused.ts'
import { expectNotRefused } from '../../../core/botanical/refuse/refusal.ts'
import { nameWords } from '../../../core/spelling/normalise-name.ts'
import { eachHolds } from '../../each-holds.ts'
import { refusal, refusedValues } from '../quantity/refusal.ts'

const listed = (names: string): readonly string[] => names.split(', ')
const names = catalogue.flatMap(({ id }) =>
  listed(namesElsewhere[id] ?? '').flatMap((name) => (name ? [[name, id]] : [])),
)
const refusedKeys = new Set(allRefusedNames.map(({ name }) => keyOf(nameWords(name))))

// From memory: German, French and Spanish names.
test('each names its plant, in any case', () =>
  eachHolds(names as [string, string][], String, ([name, id]) => {
    for (const text of [name, name.toUpperCase()]) expect(findBotanical(text).botanical.id).toBe(id)
  }))

test('each is no other plant, and nothing that is refused or asked about', () =>
  eachHolds(names as [string, string][], String, ([name, id]) => {
    const key = keyOf(nameWords(name))
    expect(key).not.toBe('')
    expect(byName.get(key)?.map((plant) => plant.id)).toEqual([id])
    expect(byAskWord.has(key)).toBe(false)
    expect(refusedKeys.has(key)).toBe(false)
    expectNotRefused(name)
  }))

test.each(Object.entries(asksElsewhere))('%s is asked about in other languages', (id, words) => {
  for (const word of listed(words)) {
    expect(refusal(() => findBotanical(word))).toBe('ambiguous unclear_botanical')
    expect(refusedValues(() => findBotanical(word))).toMatchObject({ ask: id })
  }
})

test('every plant with a narrow limit has names elsewhere', () => {
  const narrow = catalogue.filter(({ ceiling, names: { latin } }) => {
    return ceiling !== null && ceiling.gPerLSpirit <= 50 && !latin.some((name) => name.startsWith('Capsicum'))
  })
  expect(narrow.filter(({ id }) => namesElsewhere[id] === undefined).map(({ id }) => id)).toEqual([])
})

test.each(['japanischer Sternanis', 'safran des prés', 'anis étoilé du Japon', 'azafrán bastardo', 'Herbstzeitlose'])(
  '%s stays refused beside its relative’s name',
  (name) => {
    expect(refusal(() => expectNotRefused(name))).toMatch(/^refused/)
  },
)
