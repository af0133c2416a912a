import { expect, it } from 'vitest'
import { typedAs } from '../../../bot/commands/jar/known/add-line.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { isFormAsked } from '../../../core/botanical/find/in-form.ts'
import { readPlants } from '../../../core/recipe/plan/find-plants.ts'

it.each([
  ['coffee_whole', 'coffee beans'],
  ['clove', 'cloves'],
  ['sloe', 'sloes'],
  ['almond_sweet', 'sweet almonds'],
  // Of what is weighed as one mass there is no plural in a kitchen.
  ['ginger', 'ginger'],
  ['garlic', 'garlic'],
  ['lemon_peel', 'lemon'],
])('asks for %s by weight as %s', (id, name) => {
  expect(typedAs({ id, name: id })).toBe(name)
})

it('asks for each plant by a name that is read as it and no other', () => {
  for (const botanical of catalogue) {
    const { id } = botanical
    const state = isFormAsked(botanical) ? 'dried ' : ''
    const { plants, unknown } = readPlants(`30 g ${state}${typedAs({ id, name: id })}`)
    expect([plants.map((each) => each.botanical.id), unknown]).toEqual([[id], []])
  }
})
