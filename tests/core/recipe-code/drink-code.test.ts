import { expect, it, test } from 'vitest'
import { readDrink } from '../../../core/botanical/drink/read-drink.ts'
import { decodeBatch, encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { drinkNumbers, drinkTold } from '../../../core/recipe/code/drink-numbers.ts'
import { refusal } from '../quantity/refusal.ts'
import { number, numbers } from './forged.ts'
import { LEMON } from './recipes.ts'

const [spirit] = LEMON.spirits
const called = (drink: string) => ({ ...LEMON, spirits: [{ ...spirit!, drink }, spirit!] })

it('is of the third version where a spirit is called something, and tells what', () => {
  const third = numbers(
    3,
    1,
    number,
    105_000,
    101,
    0,
    2,
    10_000,
    9500,
    2,
    10_000,
    9500,
    0,
    0,
    0,
    0,
    0,
    0,
    3001,
    2500,
    21,
    0,
    31,
  )
  expect(encodeBatch(called('gin'))).toBe(third)
  expect(decodeBatch(third)).toEqual(called('gin'))
  expect(encodeBatch(LEMON)[0]).toBe('1')
})

it('numbers drinks as it always did', () => {
  expect(drinkNumbers.slice(0, 32).join(', ')).toBe(
    'vodka, gin, rum, brandy, whisky, grappa, tequila, white rum, dark rum, golden rum, London dry gin, dry gin, whiskey, ' +
      'bourbon, Scotch whisky, cognac, armagnac, calvados, mezcal, cachaça, schnapps, korn, eau de vie, kirsch, pisco, ' +
      'aquavit, orujo, rakia, slivovitz, marc, arrack, shochu',
  )
})

it('has each drink as it is read where it is typed', () => {
  for (const drink of drinkNumbers) {
    const read = readDrink(drink, { water: false }).drink
    expect(read === null ? drink : drinkTold(read), drink).toBe(drink)
  }
})

test.each([
  ['gin', 'gin'],
  ['ginebra', 'gin'],
  ['aged rhum', 'rum'],
  ['kirschwasser', undefined],
  [null, undefined],
])('tells %s as %s', (drink, told) => expect(drinkTold(drink)).toBe(told))

it('says of a drink to come that it takes a newer bot', () => {
  const code = numbers(3, 1, number, 105_000, 101, 0, 1, 10_000, 9500, 9000, 0, 0, 0, 0, 0, 3001, 2500, 21, 0, 31)
  expect(refusal(() => decodeBatch(code))).toBe('bad_value code_newer')
})
