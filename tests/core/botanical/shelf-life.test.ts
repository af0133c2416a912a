import { expect, it, test } from 'vitest'
import { openedMonths, type ShelfPlant, shelfLife } from '../../../core/botanical/limits/shelf-life.ts'

const of = (kind: ShelfPlant['kind'], id: string | null = null): ShelfPlant => ({ id, kind })

const STRONG = { abvPercent: 30, keeping: 'keeps' } as const

// A distillery engineer's note of 19 September 2020; citrus: common practice, no source. Of nuts nothing was found.
test.each([
  [of('citrus', 'lemon_peel'), 12],
  [of('berry', 'strawberry'), 3],
  [of('fruit', 'sloe'), 6],
  [of('berry', 'raspberry'), 6],
  [of('herb', 'basil'), 36],
  [of('nut', 'green_walnut'), 36],
  [of('nut', 'hazelnut'), null],
  [of('spice', 'ginger'), null],
  [of(null), null],
  // Outside the catalogue by what the food is.
  [of('berry'), 6],
])('of %j a closed bottle is at its best for %s months', (plant, months) => {
  expect(shelfLife([plant], STRONG)?.months).toBe(months)
})

it('goes by the plant that is past its best first, and knows nothing of no plants', () => {
  expect(shelfLife([of('citrus'), of('herb'), of('berry', 'strawberry')], STRONG)?.months).toBe(3)
  expect(shelfLife([of('spice'), of('citrus')], STRONG)?.months).toBe(12)
  expect(shelfLife([], STRONG)).toBeNull()
})

// Judgement: below 20 % vol no more than half a year, and no months at all of what may ferment.
test.each([
  [20, 'keeps', 36],
  [20 - 1e-7, 'keeps', 36],
  [19.9, 'keeps', 6],
  [16, 'undecided', null],
  [10, 'ferments', null],
] as const)('a herb liqueur of %d %% vol that %s: %s months', (abvPercent, keeping, months) => {
  expect(shelfLife([of('herb')], { abvPercent, keeping })?.months).toBe(months)
})

it('gives an opened bottle no longer than a closed one', () => {
  expect([openedMonths(36), openedMonths(6), openedMonths(3), openedMonths(null)]).toEqual([
    [6, 12],
    [6, 6],
    [3, 3],
    [6, 12],
  ])
})
