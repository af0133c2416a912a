import { describe, expect, it, test } from 'vitest'
import { fillBottles } from '../../../core/recipe/plan/fill-bottles.ts'
import { findPlants } from '../../../core/recipe/plan/find-plants.ts'
import { parseBottles } from '../../../core/recipe/plan/parse-bottles.ts'
import { refusal } from '../quantity/refusal.ts'

const found = (text: string) =>
  findPlants(text).map(({ botanical, massG, count }) => [botanical.id, massG === null ? null : massG.value, count])

describe('of:', () => {
  // Weights of fruit (derived from USDA SR28) and pieces (common practice) in the catalogue: the middle of the range.
  test.each([
    [
      '8 lemons + 30 g ginger',
      [
        ['lemon_peel', 84, 8],
        ['ginger', 30, null],
      ],
    ],
    ['lemon', [['lemon_peel', null, null]]],
    ['10 limoni', [['lemon_peel', 105, 10]]],
    ['zest of 2 lemons', [['lemon_peel', 21, 2]]],
    ['a lemon', [['lemon_peel', 10.5, 1]]],
    ['lemons 8', [['lemon_peel', 84, 8]]],
    ['ginger 30 g', [['ginger', 30, null]]],
    ['1 stick ceylon cinnamon', [['cinnamon_ceylon', 4, 1]]],
    ['2 thumbs of ginger', [['ginger', 50, 2]]],
    ['2 star anise', [['star_anise', 4, 2]]],
    ['2 tsp black tea', [['tea_black', 4.5, 2]]],
    ['30 green walnuts', [['green_walnut', 900, 30]]],
  ])('%s', (text, plants) => {
    expect(found(text)).toEqual(plants)
  })

  it('counts cloves', () => {
    const [[id, massG] = []] = found('5 cloves')
    expect(id).toBe('clove')
    expect(massG).toBeCloseTo(0.45, 9)
  })

  it('zest is ±40 %', () => {
    expect(findPlants('10 lemons')[0]!.massG).toEqual({ value: 105, plusMinus: 42 })
  })

  test.each([
    ['2 cups basil', 'bad_value piece_not_weighed'],
    ['a handful of basil', 'bad_value piece_not_weighed'],
    ['a punnet of strawberries', 'bad_value piece_not_weighed'],
    ['2 inches of ginger', 'bad_value piece_not_weighed'],
    ['2 manciate di basilico', 'bad_value piece_not_weighed'],
    ['30 g', 'bad_value plant_not_named'],
    ['8', 'bad_value plant_not_named'],
    ['8 lemons + 20 g lemon peel', 'bad_value plant_twice'],
    ['5 rose leaves', 'not_found unknown_botanical'],
    ['3 sprigs of violets', 'bad_value piece_not_weighed'],
    ['a pinch of raspberries', 'bad_value piece_not_weighed'],
    ['a bit of ginger', 'bad_value piece_not_weighed'],
    ['a little bit of turmeric', 'bad_value piece_not_weighed'],
    ['a small piece of mace', 'bad_value piece_not_weighed'],
    ['a few leaves of basil', 'bad_value piece_not_weighed'],
    ['a strip of rhubarb', 'bad_value piece_not_weighed'],
    ['un pezzetto di zenzero', 'bad_value piece_not_weighed'],
    ['lemon +', 'bad_value dangling_plus'],
    ['lemon + ginger + foxglove', 'refused refused_botanical'],
    ['3 drops of clove oil', 'refused refused_botanical'],
    ['2 cups of foxglove', 'refused refused_botanical'],
    ['500 g cofee', 'ambiguous unclear_botanical'],
    ['sage', 'ambiguous unsaid_form'],
    ['xyzzy', 'not_found unknown_botanical'],
  ])('%s is refused: %s', (text, reason) => {
    expect(refusal(() => findPlants(text))).toBe(reason)
  })
})

describe('bottles:', () => {
  test.each([
    ['4 x 500 ml', [[4, 500]]],
    ['4 × 0.5 l', [[4, 500]]],
    ['4 bottles of 500 ml', [[4, 500]]],
    ['5 bottles of 500\u00a0ml', [[5, 500]]],
    ['4 of 750 ml', [[4, 750]]],
    ['4 da 75 cl', [[4, 750]]],
    ['4 bottiglie da 50 cl', [[4, 500]]],
    ['4', [[4, 500]]],
    ['4 bottles', [[4, 500]]],
    ['750 ml', [[null, 750]]],
    [
      '2 x 750 ml + 500 ml',
      [
        [2, 750],
        [null, 500],
      ],
    ],
  ])('%s', (text, bottles) => {
    expect(parseBottles(text).map(({ count, volumeMl }) => [count, volumeMl])).toEqual(bottles)
  })

  test.each([
    ['0', 'bad_value bottles_not_read'],
    ['20000 x 1 l', 'bad_value bottles_not_read'],
    ['4 x 500', 'bad_value no_unit'],
    ['4 of 500', 'bad_value no_unit'],
    ['4 of them', 'bad_value bottles_not_read'],
    ['six', 'bad_value bottles_not_read'],
    ['4 x 500 g', 'bad_value wrong_kind'],
    ['500 ml at 28 C', 'bad_value bottles_not_read'],
  ])('%s is refused: %s', (text, reason) => {
    expect(refusal(() => parseBottles(text))).toBe(reason)
  })

  it('fills full bottles, in their order', () => {
    const sizes = parseBottles('2 x 750 ml + 500 ml')
    expect(fillBottles(2600, sizes)).toEqual({
      bottles: [
        { count: 2, volumeMl: 750 },
        { count: 2, volumeMl: 500 },
      ],
      leftoverMl: 100,
      empty: 0,
    })
    expect(fillBottles(700, sizes)).toMatchObject({ bottles: [{ count: 0 }, { count: 1 }], leftoverMl: 200, empty: 2 })
  })
})
