import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { findPlants, readPlants } from '../../../core/recipe/plan/find-plants.ts'

/** What a piece weighs on a kitchen scale, g, from and to: common practice, no source, but where a row of USDA's table is named. */
const WEIGH = [
  ['a strip of orange peel', 1, 2.5],
  ['2 strips of lemon zest', 1.5, 4],
  ['a long twist of lemon peel', 0.5, 2],
  ['a piece of orange peel', 1, 2.5],
  ['una striscia di scorza di limone', 0.5, 2],
  // 5 slices are 11 g: USDA SR, row 11216, from memory.
  ['5 slices of ginger', 8, 14],
  ['3 thin slices of ginger', 4, 9],
  ['una fettina di zenzero', 1.5, 3],
  // 10 sprigs are 10 g: row 11297, from memory.
  ['10 sprigs of parsley', 8, 12],
  ['a sprig of basil', 1, 3],
  // 2 leaves are 0.05 g of the one and 0.3 g of the other: rows 02064 and 02065, from memory.
  ['10 spearmint leaves', 0.2, 2],
  ['a pinch of black pepper', 0.1, 0.5],
  ['un pizzico di cumino', 0.1, 0.5],
] as const

describe('a piece weighs what such a piece weighs', () => {
  it.each(WEIGH)('%s', (text, least, most) => {
    const [{ massG } = { massG: null }] = findPlants(text)
    expect(massG!.value).toBeGreaterThanOrEqual(least)
    expect(massG!.value).toBeLessThanOrEqual(most)
  })
})

const MEASURES = [
  'a strip of',
  'a bit of',
  'a small piece of',
  'a slice of',
  'a sprig of',
  'a pinch of',
  'a twist of',
  'a chunk of',
  'a few leaves of',
  'un pezzetto di',
  'un pizzico di',
  'qualche foglia di',
]

/** Whether the usual dose was taken in silence. */
function isUsual(text: string): boolean {
  try {
    return readPlants(text).plants.some(({ massG }) => massG === null)
  } catch (error) {
    if (error instanceof DomainError) return false
    throw error
  }
}

it.each(MEASURES)('%s any plant is weighed or asked for, and never the usual dose', (measure) => {
  expect(catalogue.map(({ names }) => `${measure} ${names.en[0]}`).filter(isUsual)).toEqual([])
})

it('a strip of every peel is a small part of the fruit’s', () => {
  const peels = catalogue.filter(({ zestGPerFruit }) => zestGPerFruit !== null)
  expect(peels.length).toBeGreaterThan(8)
  for (const { names, zestGPerFruit } of peels) {
    const [{ massG } = { massG: null }] = findPlants(`1 strip of ${names.en[0]}`)
    expect(massG!.value).toBeLessThan(zestGPerFruit!.strips[0] / 4)
  }
})
