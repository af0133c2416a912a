import { describe, expect, it, test } from 'vitest'
import { plantList } from '../../../core/botanical/words/plant-list.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { readPlants } from '../../../core/recipe/plan/find-plants.ts'

const countsOf = (text: string) =>
  readPlants(text).plants.map(({ botanical: { id }, count, massG }) => [id, count ?? massG?.value ?? null])

describe('plants as people list them', () => {
  test.each<[string, (string | number | null)[][]]>([
    [
      '10 lemons and 2 oranges',
      [
        ['lemon_peel', 10],
        ['orange_peel', 2],
      ],
    ],
    [
      '10 limoni e 2 arance',
      [
        ['lemon_peel', 10],
        ['orange_peel', 2],
      ],
    ],
    [
      '500 g raspberries, 1 vanilla pod',
      [
        ['raspberry', 500],
        ['vanilla', 1],
      ],
    ],
    [
      '500 g lamponi con una stecca di vaniglia',
      [
        ['raspberry', 500],
        ['vanilla', 1],
      ],
    ],
    [
      '500 g sloes, 1 Ceylon cinnamon stick, 4 cloves',
      [
        ['sloe', 500],
        ['cinnamon_ceylon', 1],
        ['clove', 4],
      ],
    ],
    [
      '50 g ginger & 2 limes',
      [
        ['ginger', 50],
        ['lime_peel', 2],
      ],
    ],
    [
      '44 coffee beans and an orange',
      [
        ['coffee_whole', 44],
        ['orange_peel', 1],
      ],
    ],
    ['ten lemons', [['lemon_peel', 10]]],
    ['a dozen lemons', [['lemon_peel', 12]]],
    ['half a dozen lemons', [['lemon_peel', 6]]],
    ['mezza dozzina di arance', [['orange_peel', 6]]],
    ['a couple of oranges', [['orange_peel', 2]]],
    ['a few cloves', [['clove', null]]],
    ['some basil', [['basil', null]]],
    [
      'strawberry and basil',
      [
        ['strawberry', null],
        ['basil', null],
      ],
    ],
    [
      'lemon, ginger',
      [
        ['lemon_peel', null],
        ['ginger', null],
      ],
    ],
    ['lemons, organic', [['lemon_peel', null]]],
    ['the zest of ten lemons', [['lemon_peel', 10]]],
    ['10 lemons from the market', [['lemon_peel', 10]]],
    ["500 g figs from my neighbour's tree", [['fig', 500]]],
    ['20 elderflower heads from my garden', [['elderflower', 20]]],
    ['cherries, 500 g', [['sweet_cherry', 500]]],
    ['cherries, 500 g, stoned', [['sweet_cherry', 500]]],
    ['lemons, 8', [['lemon_peel', 8]]],
    ['1,5 kg strawberries', [['strawberry', 1500]]],
    ['3 pods of star anise', [['star_anise', 3]]],
    ['1 stecca di vaniglia', [['vanilla', 1]]],
    ['3 sticks lemongrass', [['lemongrass', 3]]],
  ])('%s', (text, plants) => expect(countsOf(text)).toEqual(plants))

  test.each([
    '10 lemons and 5 g oleander',
    '10 lemons, 5 g foxglove leaves',
    'a few red berries',
    'some leaves',
    '500 g cherries and 30 noccioli',
    '500 g cherries + 30 noccioli',
    '500 g cherries with 20 stones',
    'ten yew berries',
    'lemon and oleander',
    'cherries and kernels',
    'wild angelica from the market',
  ])('%s: refused', (text) => {
    const found = (() => {
      try {
        return readPlants(text)
      } catch (error) {
        if (error instanceof DomainError) return error.code
        throw error
      }
    })()
    expect(found).toBe('refused')
  })

  it('changes nothing that is one plant, or an amount below zero', () => {
    for (const text of ['10 lemons + -30 g ginger', 'sweet and sour cherries', 'lemon, untreated', '8 lemons, large']) {
      expect(plantList(text)).toBe(text)
    }
  })
})
