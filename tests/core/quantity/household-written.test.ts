import { describe, expect, it } from 'vitest'
import { parseVolume } from '../../../core/quantity/read/parse-volume.ts'
import { parseWaters } from '../../../core/quantity/read/parse-water.ts'
import { householdVolume } from '../../../core/quantity/write/household.ts'
import { householdTyped } from '../../../core/quantity/write/household-typed.ts'
import { kitchenSugar, kitchenWater } from '../../../core/quantity/write/made-amounts.ts'
import { writeSugars, writeWaters } from '../../../core/quantity/write/write-quantity.ts'
import { sampled } from '../../runs.ts'

/**
 * From a few millilitres to many litres, closer together where spoons are told. The short run takes one of six, which are
 * 8 % apart; those between them are left to the long one.
 */
const AMOUNTS = sampled(
  Array.from({ length: 700 }, (_, at) => Number((2 * 1.0125 ** at).toPrecision(3))).filter((value) => value < 12_000),
  6,
)
const SYSTEMS = ['us', 'imperial'] as const

describe.each(SYSTEMS)('an amount as a household of %s tells it', (system) => {
  it.each([0, 1, 30])('of water can be typed as it is written, ± %d ml', (plusMinus) => {
    for (const value of AMOUNTS) {
      const water = kitchenWater({ value, plusMinus }, null, system)
      const text = writeWaters(water)
      expect(parseWaters(text), text).toEqual(water)
    }
  })

  it('of two measures is written without decimals', () => {
    const texts = AMOUNTS.map((value) => writeWaters(kitchenWater({ value, plusMinus: 1 }, null, system)))
    expect(texts.filter((text) => /(?:cups?|pints?) \d+\.|\d\.\d+ (?:cups?|imp pints?) \d/.test(text))).toEqual([])
  })

  it('of juice can be written too', () => {
    for (const value of AMOUNTS.filter((_, at) => at % 10 === 0))
      expect(writeWaters(kitchenWater({ value, plusMinus: 1 }, 'orange_juice', system))).toMatch(/juice$/)
  })

  it('of sugar can be written too', () => {
    for (const value of AMOUNTS)
      expect(writeSugars([kitchenSugar({ value, plusMinus: 1 }, 'honey', system)])).toMatch(/honey$/)
  })
})

it.each([
  ['½ cup + 1 ½ tbsp', 9.5],
  ['1 cup and 2 tbsp', 18],
  ['1/4 cup plus 1 tbsp', 5],
])('reads %s', (text, spoons) => {
  expect(parseVolume(text).volumeMl).toBeCloseTo(spoons * 14.78676, 3)
})

it('is told as it is typed, cups in halves and the rest in spoons', () => {
  const told = householdVolume({ value: 67, plusMinus: 1 }, 'us')!
  expect(householdTyped(told)).toBe('1/4 cup 1/2 tbsp')
  expect(parseVolume('1/4 cup 1/2 tbsp').volumeMl).toBeCloseTo(4.5 * 14.78676, 3)
  expect(householdTyped(householdVolume({ value: 158, plusMinus: 1 }, 'us')!)).toBe('2/3 cup')
})
