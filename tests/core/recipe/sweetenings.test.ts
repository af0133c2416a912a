import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../../../core/domain-error.ts'
import { depressionK } from '../../../core/liquid/freezing.ts'
import {
  abvPercent,
  densityGPerMl,
  dissolvedIn,
  ethanolG,
  extractG,
  type Liquid,
  liquidFrom,
  massG,
  mix as pour,
  sugar,
  sugarG,
  sugarGPerL,
  sweetener,
  volumeMl,
  water,
  waterG,
} from '../../../core/liquid/liquid.ts'
import { brixByRefraction } from '../../../core/liquid/measure/refraction.ts'
import { type MaterialId, materialIds, materialOf, sugarsShare } from '../../../core/quantity/materials.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { mix } from '../../../core/recipe/solve/mix.ts'
import { gramOf, knownSweetenings, sweetLiquid } from '../../../core/recipe/sweetening.ts'
import { compare, readTable } from '../../published/table.ts'
import { runs, SEED } from '../../runs.ts'
import { portion } from './kitchens.ts'

const material = fc.constantFrom(...materialIds)
const sweetening = fc.record({ material, massG: fc.double({ min: 0, max: 3000, noNaN: true }).map(exactly) })
const some = fc.array(sweetening, { maxLength: 4 })

const near = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(other))

test('water, sugars and all the rest of what sweetens are in the mixture, none lost and none made', () => {
  fc.assert(
    fc.property(some, fc.double({ min: 100, max: 5000, noNaN: true }), (sweetenings, ml) => {
      const plain = liquidFrom({ volumeMl: ml, abvPercent: 50, sugarGPerL: 0 })
      const made = pour(plain, sweetLiquid(sweetenings.map((each) => ({ ...each, massG: each.massG.value }))))
      const sum = (of: (per100G: ReturnType<typeof materialOf>['per100G']) => number) =>
        sweetenings.reduce((all, each) => all + (each.massG.value * of(materialOf(each.material).per100G)) / 100, 0)
      const all = sweetenings.reduce((total, each) => total + each.massG.value, 0)
      expect(near(waterG(made), waterG(plain) + sum(({ water: inIt }) => inIt))).toBe(true)
      expect(
        near(
          sugarG(made),
          sum((each) => each.sucrose + each.glucoseAndFructose + each.longer),
        ),
      ).toBe(true)
      expect(near(massG(made), massG(plain) + all)).toBe(true)
      expect(near(ethanolG(made), ethanolG(plain))).toBe(true)
    }),
    { seed: SEED, numRuns: runs(200, 5000) },
  )
})

test('honey: 200 g bring 164.2 g of sugars and 34.4 g of water, to 1e-9', () => {
  const honey = sweetLiquid([{ material: 'honey', massG: 200 }])
  expect(Math.abs(sugarG(honey) - 164.2)).toBeLessThan(1e-9)
  expect(Math.abs(waterG(honey) - 34.4)).toBeLessThan(1e-9)
  expect(Math.abs(extractG(honey) - 1.4)).toBeLessThan(1e-9)
})

test('a jar of other sugars than usual has as much less water, and weighs the same', () => {
  fc.assert(
    fc.property(material, fc.double({ min: 0.9, max: 1, noNaN: true }), (id, factor) => {
      const [usual, other] = [gramOf(id), gramOf(id, factor)]
      expect(massG(other)).toBeCloseTo(massG(usual), 12)
      expect(sugarG(other)).toBeCloseTo(sugarG(usual) * factor, 12)
    }),
    { seed: SEED, numRuns: runs(100, 1000) },
  )
})

test('what a liquid holds in a litre makes that liquid again, other sugars and extract too', () => {
  const liquid = fc
    .record({
      percent: fc.double({ min: 5, max: 70, noNaN: true }),
      sweetenings: some,
      ml: fc.double({ min: 500, max: 5000, noNaN: true }),
    })
    .map(({ percent, sweetenings, ml }) =>
      pour(
        liquidFrom({ volumeMl: ml, abvPercent: percent, sugarGPerL: 0 }),
        sweetLiquid(sweetenings.map((each) => ({ ...each, massG: each.massG.value / 3 }))),
      ),
    )
  fc.assert(
    fc.property(liquid, (is: Liquid) => {
      const again = liquidFrom({
        ...dissolvedIn(is),
        volumeMl: volumeMl(is),
        abvPercent: abvPercent(is),
        sugarGPerL: sugarGPerL(is),
      })
      for (const of of [ethanolG, waterG, sugarG, extractG, massG]) expect(of(again)).toBeCloseTo(of(is), 6)
      expect(depressionK(again)).toBeCloseTo(depressionK(is), 6)
    }),
    { seed: SEED, numRuns: runs(200, 2000) },
  )
})

const plainHexose = (massPercent: number) =>
  pour(
    water(100 - massPercent),
    sweetener({ waterG: 0, sugarG: massPercent, extractG: 0, sucroseEquivalentG: 1.82 * massPercent }),
  )

describe('other sugars than sucrose', () => {
  const freezing = readTable('freezing-hexoses-crc')
  test(`lower the freezing point further (${freezing.source})`, () => {
    for (const column of [1, 2]) {
      const { off, compared } = compare(freezing, column, ([mass]) => depressionK(plainHexose(mass!)))
      expect(off).toEqual([])
      expect(compared).toBeGreaterThan(5)
    }
  })

  test('invert syrup is all glucose and fructose; glucose syrup lowers it by 0.8 of sucrose (memory of the trade)', () => {
    const depressed = (id: 'invert_syrup' | 'glucose_syrup', sugarsG: number) => {
      const inIt = sweetLiquid([{ material: id, massG: sugarsG / sugarsShare(id) }])
      return depressionK(pour(inIt, water(100 - waterG(inIt))))
    }
    const sucrose = depressionK(pour(water(100), sweetLiquid([{ material: 'white_sugar', massG: 25 }])))
    expect(depressed('invert_syrup', 25) / sucrose).toBeCloseTo(1.82, 6)
    expect(depressed('glucose_syrup', 25) / sucrose).toBeCloseTo(0.8, 1)
  })

  test('honey by its kinds: 69.5 glucose and fructose at 1.82, 8.6 at 1, 4 of longer sugars at 0.7 (White 1962; molar masses)', () => {
    const honey = gramOf('honey')
    const depressed = depressionK(pour(water(4 - waterG(honey)), honey))
    const sucrose = depressionK(pour(water(4), sweetLiquid([{ material: 'white_sugar', massG: 0.821 }])))
    expect(depressed / sucrose).toBeCloseTo((69.5 * 1.82 + 8.6 + 4 * 0.7) / 82.1, 1)
  })

  test('make first ice less sure in the measure in which they lower it', () => {
    const made = (id: 'honey' | 'white_sugar') => {
      const sweet = [{ material: id, massG: exactly(250 / sugarsShare(id)) }]
      return mix({ portions: [portion(1000, 30)], sweetenings: sweet }).outcome.freezesAtC.plusMinus
    }
    expect(made('honey') / made('white_sugar')).toBeGreaterThan(1.5)
  })

  test('show in a refractometer as sugar does, and so does what is no sugar', () => {
    const with5 = sweetener({ waterG: 0, sugarG: 15, extractG: 5, sucroseEquivalentG: 20 })
    expect(brixByRefraction(pour(water(80), with5))).toBeCloseTo(brixByRefraction(pour(water(80), sugar(20))), 1)
    expect(brixByRefraction(pour(water(80), with5))).toBeCloseTo(20, 1)
  })

  const density = readTable('density-sugars-crc')
  test(`take the room of sucrose within a few thousandths (${density.source})`, () => {
    for (const column of [1, 2, 3]) {
      const { off, compared } = compare(density, column, ([mass]) => densityGPerMl(plainHexose(mass!)))
      expect(off).toEqual([])
      expect(compared).toBeGreaterThan(5)
    }
  })
})

test('glucose and fructose are refused nowhere for what is known of sucrose alone', () => {
  const made = (id: MaterialId) => () =>
    mix({ portions: [portion(1000, 75)], sweetenings: [{ material: id, massG: exactly(700) }] }).sugarStays
  for (const id of ['honey', 'agave_syrup', 'invert_syrup'] as const) expect(made(id)(), id).toBe('not_known')
  for (const id of ['white_sugar', 'demerara', 'brown_sugar'] as const) expect(made(id), id).toThrow(DomainError)
})

test('how little the sugars of honey are known widens the ± of what comes of it; white sugar’s does not', () => {
  const made = (id: 'honey' | 'white_sugar') =>
    mix({ portions: [portion(1000, 40)], sweetenings: [{ material: id, massG: exactly(300) }] }).outcome.sugarGPerL
  const honey = made('honey')
  // 3 g of 82.1 are 3.7 %.
  expect(honey.plusMinus / honey.value).toBeGreaterThan(0.03)
  expect(honey.plusMinus / honey.value).toBeLessThan(0.05)
  expect(made('white_sugar').plusMinus / made('white_sugar').value).toBeLessThan(0.03)
  expect(knownSweetenings([{ material: 'white_sugar', massG: exactly(1) }])).toEqual([
    { material: 'white_sugar', massG: exactly(1) },
  ])
})
