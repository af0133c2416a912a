import { describe, expect, it, test } from 'vitest'
import { materialIds } from '../../../core/quantity/materials.ts'
import { decodeBatch, encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { materialNumbers } from '../../../core/recipe/code/material-numbers.ts'
import { refusal } from '../quantity/refusal.ts'
import { number, numbers } from './forged.ts'
import { LEMON } from './recipes.ts'

describe('a code', () => {
  it('is of the first version where only white sugar is in it, of the second where something else is', () => {
    const honeyed = {
      ...LEMON,
      sweetenings: [{ material: 'honey', massTenthG: 2000 }],
      sweetener: 'maple_syrup',
      filler: 'apple_juice',
    } as const
    const second = numbers(
      2,
      1,
      number,
      105_000,
      101,
      0,
      1,
      10_000,
      9500,
      0,
      0,
      1,
      2,
      2000,
      3,
      16,
      3001,
      2500,
      21,
      0,
      31,
    )
    expect(encodeBatch(honeyed)).toBe(second)
    expect(decodeBatch(second)).toEqual(honeyed)
    expect(encodeBatch(LEMON)[0]).toBe('1')
    expect(second[0]).toBe('2')
  })

  it('names materials by numbers that never change', () => {
    expect(materialNumbers.slice(0, 28).join(' ')).toBe(
      'white_sugar invert_syrup honey maple_syrup agave_syrup demerara brown_sugar muscovado glucose_syrup golden_syrup date_syrup ' +
        'syrup_1_1_weight syrup_1_1_cup syrup_2_1_weight syrup_2_1_cup orange_juice apple_juice grape_juice pineapple_juice ' +
        'pomegranate_juice lemon_juice lime_juice raspberry_puree strawberry_puree peach_puree coffee tea citric_acid',
    )
    expect([...materialNumbers].sort()).toEqual([...materialIds].sort())
  })
})

test.each<readonly [string, string, string]>([
  [
    'sugar to come',
    numbers(2, 1, number, 9, 0, 0, 1, 10_000, 9500, 0, 0, 1, 9000, 10, 0, 0, 0, 0, 0),
    'bad_value code_newer',
  ],
  [
    'a sweetener to come',
    numbers(2, 1, number, 9, 0, 0, 1, 10_000, 9500, 0, 0, 0, 9000, 0, 0, 0, 0),
    'bad_value code_newer',
  ],
  [
    'honey twice',
    numbers(2, 1, number, 9, 0, 0, 1, 10_000, 9500, 0, 0, 2, 2, 10, 2, 10, 0, 0, 0, 0, 0),
    'bad_value code_damaged',
  ],
  ['no honey', numbers(2, 1, number, 9, 0, 0, 1, 10_000, 9500, 0, 0, 1, 2, 0, 0, 0, 0, 0, 0), 'bad_value code_damaged'],
  [
    'white sugar as another',
    numbers(2, 1, number, 9, 0, 0, 1, 10_000, 9500, 0, 0, 1, 0, 10, 0, 0, 0, 0, 0),
    'bad_value code_damaged',
  ],
  [
    'a juice to sweeten with',
    numbers(2, 1, number, 9, 0, 0, 1, 10_000, 9500, 0, 0, 0, 16, 0, 0, 0, 0),
    'bad_value code_damaged',
  ],
  [
    'honey for water',
    numbers(2, 1, number, 9, 0, 0, 1, 10_000, 9500, 0, 0, 0, 0, 2, 0, 0, 0),
    'bad_value code_damaged',
  ],
])('%s is refused', (_, text, reason) => {
  expect(refusal(() => decodeBatch(text))).toBe(reason)
})
