import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { type Needs, NOTHING_NEEDED, plantNeed } from '../../../core/shopping/needs.ts'
import { bottlesNeeded, sweetenerNeeds } from '../../../core/shopping/needs-of-plan.ts'
import { shoppingList } from '../../../core/shopping/shopping-list.ts'
import { bagsBought, bottlesBought, countBought, massBoughtG, soldIn } from '../../../core/shopping/sold.ts'
import { runs, SEED } from '../../runs.ts'

const EU = soldIn('IT')

test('nothing is bought to sweeten with of which nothing goes in', () => {
  const none = { material: 'white_sugar', massG: exactly(0) } as const
  expect(sweetenerNeeds([none])).toEqual([])
  expect(sweetenerNeeds([none, { material: 'honey', massG: exactly(5) }])).toEqual([{ material: 'honey', massG: 5 }])
})

/** Counted by hand; the sizes as in `sold.ts`. */
test.each([
  [1000, null, 1, 1000],
  [7000, null, 7, 1000],
  [1005, null, 1, 1000],
  [1400, null, 2, 700],
  [2600, null, 4, 700],
  [1900, null, 2, 1000],
  [50, null, 1, 700],
  [700, 'US', 1, 750],
  [2200, 'US', 3, 750],
])('%d ml of spirit in country %s is %d bottles of %d ml', (neededMl, country, count, sizeMl) => {
  expect(bottlesBought(neededMl, soldIn(country).spiritMl)).toEqual({ count, sizeMl })
})

it('leaves no less over in any other way, tried one by one', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 20_000 }), fc.constantFrom('IT', 'US'), (neededMl, country) => {
      const { spiritMl } = soldIn(country)
      const { count, sizeMl } = bottlesBought(neededMl, spiritMl)
      const over = count * sizeMl - neededMl
      expect(over).toBeGreaterThanOrEqual(-0.01 * sizeMl)
      for (const each of spiritMl) {
        for (let many = 1; many <= 40; many++) {
          if (many * each >= neededMl) expect(Math.max(0, over)).toBeLessThanOrEqual(many * each - neededMl)
        }
      }
    }),
    { seed: SEED, numRuns: runs(80, 5000) },
  )
})

test.each([
  [3, 3],
  [3.2, 4],
  [31, 35],
  [101, 110],
  [751, 800],
  [1190, 1200],
])('%d g is asked for as %d g', (massG, boughtG) => {
  expect(massBoughtG(massG)).toBeCloseTo(boughtG, 9)
})

it('counts whole pieces and whole bags', () => {
  expect([10, 9.2, 1e-9 + 4].map(countBought)).toEqual([10, 10, 4])
  expect([540, 1000, 1190, 3010].map((massG) => bagsBought(massG, 1000))).toEqual([1, 1, 2, 3])
})

describe('bottles to fill', () => {
  const open = [{ count: null, volumeMl: 500 }]
  test.each([
    [2500, open, [{ count: 5, volumeMl: 500 }]],
    [2540, open, [{ count: 5, volumeMl: 500 }]],
    [2550, open, [{ count: 5, volumeMl: 500 }]],
    [2551, open, [{ count: 6, volumeMl: 500 }]],
    [2870, open, [{ count: 6, volumeMl: 500 }]],
    [300, open, [{ count: 1, volumeMl: 500 }]],
    [2870, [{ count: 3, volumeMl: 500 }], [{ count: 3, volumeMl: 500 }]],
    [
      1900,
      [
        { count: 2, volumeMl: 500 },
        { count: null, volumeMl: 200 },
      ],
      [
        { count: 2, volumeMl: 500 },
        { count: 5, volumeMl: 200 },
      ],
    ],
  ])('%d ml', (batchMl, wanted, bottles) => {
    expect(bottlesNeeded(batchMl, wanted)).toEqual(bottles)
  })
})

/** A lemon gives 8 to 13 g of peel in strips by the catalogue, so 10.5 g. */
it('buys whole fruit for their peel, however the peel was said', () => {
  const peel = { id: 'lemon_peel', name: 'lemon', isDried: false }
  const each = (8 + 13) / 2
  const needs = [
    plantNeed({ ...peel, massG: 10 * each, count: 10 }),
    plantNeed({ ...peel, massG: 2.4 * each, count: null }),
  ]
  const { plants } = shoppingList([{ ...NOTHING_NEEDED, plants: needs }], [], EU)
  expect(plants).toHaveLength(1)
  expect(plants[0]).toMatchObject({ ofZest: true, buyCount: 13 })
})

const spirits = fc.array(
  fc.record({
    volumeMl: fc.integer({ min: 10, max: 5000 }),
    abvPercent: fc.constantFrom(40, 75.5, 95),
    sugarGPerL: fc.constant(0),
    drink: fc.constant(null),
  }),
  { maxLength: 4 },
)
const sweeteners = fc.array(
  fc.record({
    material: fc.constantFrom('white_sugar' as const, 'honey' as const),
    massG: fc.integer({ min: 1, max: 4000 }),
  }),
  { maxLength: 3 },
)
const plants = fc.array(
  fc
    .record({
      id: fc.constantFrom('ginger', 'raspberry', 'lemon_peel', 'vanilla', 'cinnamon_ceylon'),
      massG: fc.integer({ min: 2, max: 900 }),
      count: fc.option(fc.integer({ min: 1, max: 20 })),
    })
    .map(({ id, massG, count }) => plantNeed({ id, name: id, isDried: false, massG, count })),
  { maxLength: 4 },
)
const bottles = fc.array(
  fc.record({ count: fc.integer({ min: 1, max: 9 }), volumeMl: fc.constantFrom(200, 500, 750) }),
  { maxLength: 3 },
)
const batch: fc.Arbitrary<Needs> = fc.record({ plants, spirits, sweeteners, bottles }).map((some) => ({
  ...NOTHING_NEEDED,
  ...some,
  jars: [{ count: 1, volumeMl: 1500 }],
  isToStrain: true,
  isToFilter: true,
}))

const sum = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0)

it('takes of each thing once, all that the batches take of it, and buys enough', () => {
  fc.assert(
    fc.property(fc.array(batch, { minLength: 1, maxLength: 4 }), (all) => {
      const list = shoppingList(all, [], EU)
      for (const abvPercent of [40, 75.5, 95]) {
        const wantedMl = sum(
          all
            .flatMap((each) => each.spirits.filter((one) => one.abvPercent === abvPercent))
            .map(({ volumeMl }) => volumeMl),
        )
        const found = list.spirits.filter((one) => one.abvPercent === abvPercent)
        expect(found.map(({ volumeMl }) => volumeMl)).toEqual(wantedMl === 0 ? [] : [wantedMl])
        for (const { count, sizeMl } of found) expect(count * sizeMl).toBeGreaterThanOrEqual(wantedMl - 0.01 * sizeMl)
      }
      for (const material of ['white_sugar', 'honey']) {
        const wantedG = sum(
          all.flatMap((each) => each.sweeteners.filter((one) => one.material === material)).map(({ massG }) => massG),
        )
        const found = list.sweeteners.filter((one) => one.material === material)
        expect(found.map(({ massG }) => massG)).toEqual(wantedG === 0 ? [] : [wantedG])
        for (const { buyG } of found) expect(buyG).toBeGreaterThanOrEqual(wantedG - 0.01 * EU.sugarG)
      }
      for (const id of new Set(all.flatMap((each) => each.plants.map((one) => one.id)))) {
        const wanted = all.flatMap((each) => each.plants.filter((one) => one.id === id))
        const [found, ...twice] = list.plants.filter((one) => one.id === id)
        expect(twice).toEqual([])
        expect(found!.massG).toBeCloseTo(sum(wanted.map(({ massG }) => massG)), 6)
        expect(found!.buyG).toBeGreaterThanOrEqual(found!.massG - 1e-6)
        if (found!.count !== null) expect(found!.buyCount).toBeGreaterThanOrEqual(found!.count - 1e-6)
      }
      expect(sum(list.bottles.map(({ buyCount }) => buyCount))).toBe(
        sum(all.flatMap((each) => each.bottles.map(({ count }) => count))),
      )
      expect(sum(list.jars.map(({ buyCount }) => buyCount))).toBe(all.length)
    }),
    { seed: SEED, numRuns: runs(60, 3000) },
  )
})

it('is the same in whatever order the batches come', () => {
  const figures = (all: readonly Needs[]) => {
    const list = shoppingList(all, [], EU)
    return [
      ...list.spirits.map(({ abvPercent, count, sizeMl }) => `spirit ${abvPercent} ${count} ${sizeMl}`),
      ...list.plants.map(({ id, buyG, buyCount }) => `${id} ${buyCount ?? buyG.toFixed(3)}`),
      ...list.sweeteners.map(({ material, buyG }) => `${material} ${buyG.toFixed(3)}`),
      ...list.bottles.map(({ volumeMl, buyCount }) => `bottle ${volumeMl} ${buyCount}`),
    ].sort()
  }
  fc.assert(
    fc.property(batch, batch, batch, (one, other, third) => {
      expect(figures([third, one, other])).toEqual(figures([one, other, third]))
    }),
    { seed: SEED, numRuns: runs(50, 2000) },
  )
})
