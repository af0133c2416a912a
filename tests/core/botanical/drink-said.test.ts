import { expect, test } from 'vitest'
import { readDrink } from '../../../core/botanical/drink/read-drink.ts'

const drink = (words: string) => readDrink(words, { water: false })

test.each([
  ['', null],
  ['vodka', 'vodka'],
  ['grappa', 'grappa'],
  ['alcol puro', null],
  ['alcool buongusto', null],
  ['neutral grain spirit', null],
  ['pink gin', null],
  ['gin rosa', null],
  ['rum bianco', 'rum'],
  ['alcool non denaturato', null],
  ['undenatured vodka', 'vodka'],
  ['Polish rectified spirit', null],
  ['brandy', 'brandy'],
  ['Weingeist', null],
  ['Neutralalkohol', null],
  ['reiner Alkohol', null],
  ['alcool neutre surfin', null],
  ['alcohol rectificado', null],
  ['aguardiente', 'aguardiente'],
  ['tequila', 'tequila'],
  ['white rum', 'white rum'],
  ['a good Dark Rum', 'dark rum'],
  ['sloe gin liqueur', null],
] as const)('“%s” is fine, and called %s', (words, said) => {
  expect(drink(words)).toEqual({ named: null, isSweet: said === null && words.includes('liqueur'), drink: said })
})

test.each([
  ['Allotment Pride gin', 'Allotment Pride', 'gin'],
  ['Allotment Pride London dry gin', 'Allotment Pride', 'London dry gin'],
  ['cheap Allotment Pride gin', 'Allotment Pride', 'gin'],
  ['Marrow & Son whisky', 'Marrow Son', 'whisky'],
  ['Shelf 47 gin', 'Shelf 47', 'gin'],
])('of “%s” is %s, of %s', (words, named, said) => {
  expect(drink(words)).toEqual({ named, isSweet: false, drink: said })
})
