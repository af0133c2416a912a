import fc from 'fast-check'
import { expect, test } from 'vitest'
import { DomainError, unlessRefused } from '../../../core/domain-error.ts'
import { isJuice, type MaterialId, materialIds, sugarsShare } from '../../../core/quantity/materials.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import type { Portion } from '../../../core/recipe/portion.ts'
import { liquidOf } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { adjust } from '../../../core/recipe/solve/adjust.ts'
import { mix } from '../../../core/recipe/solve/mix.ts'
import { styles } from '../../../core/recipe/solve/styles.ts'
import { sweetnessAlone } from '../../../core/recipe/solve/sweetness-alone.ts'
import { syrup } from '../../../core/recipe/solve/syrup.ts'
import type { SyrupWish } from '../../../core/recipe/solve/syrup-for.ts'
import { gramOf } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import { expectClose, portion, waterPortion } from './kitchens.ts'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const material = fc.constantFrom(...materialIds.filter((id) => !isJuice(id)))

/** What these amounts make, as `/mix` says it. */
const poured = (portions: readonly Portion[], waterG: number, sweetener: MaterialId, sugarG: number) =>
  mix({
    portions: [...portions, ...(waterG > 0 ? [waterPortion(exactly(waterG), 'mass')] : [])],
    sweetenings: [{ material: sweetener, massG: exactly(sugarG) }],
  }).outcome

test('amounts that are worked out make what was wished for, whatever sweetens', () => {
  const wish: fc.Arbitrary<SyrupWish> = fc.oneof(
    fc.record({
      by: fc.constant('strength_and_sweetness' as const),
      abvPercent: number(18, 45),
      sugarGPerL: number(20, 380),
    }),
    fc.record({
      by: fc.constant('strength_and_ratio' as const),
      abvPercent: number(18, 45),
      sugarPerWater: number(0.2, 4),
    }),
    fc.record({
      by: fc.constant('sweetness_and_ratio' as const),
      sugarGPerL: number(20, 300),
      sugarPerWater: number(0.8, 4),
    }),
  )
  let solved = 0
  fc.assert(
    fc.property(number(200, 3000), number(50, 96), wish, material, (ml, percent, wished, sweetener) => {
      const infusion = portion(ml, percent)
      const found = unlessRefused(() => syrup(infusion, wished, null, { sweetener }))
      if (found === null) return
      solved += 1
      const made = poured([infusion], found.waterG.value, sweetener, found.sugarG.value)
      if ('abvPercent' in wished) expectClose(made.abvPercent.value, wished.abvPercent)
      if ('sugarGPerL' in wished) expectClose(made.sugarGPerL.value, wished.sugarGPerL)
      if ('sugarPerWater' in wished) expectClose(found.sugarG.value / found.waterG.value, wished.sugarPerWater)
      expectClose(found.outcome.volumeMl.value / made.volumeMl.value, 1)
    }),
    { seed: SEED, numRuns: runs(200, 4000) },
  )
  expect(solved).toBeGreaterThan(100)
})

test('what cannot be had is told with what can, and that can', () => {
  fc.assert(
    fc.property(
      number(30, 60),
      number(25, 58),
      number(100, 500),
      material,
      (percent, abvPercent, sugarGPerL, sweetener) => {
        const infusion = portion(1000, percent)
        const solve = (wish: { abvPercent: number; sugarGPerL: number }) =>
          syrup(infusion, { by: 'strength_and_sweetness', ...wish }, null, { sweetener })
        try {
          solve({ abvPercent, sugarGPerL })
        } catch (error) {
          if (!(error instanceof DomainError) || error.problem !== 'infusion_too_weak') return
          const { strongestAbvPercent, sweetestGPerL } = error.values as DomainError<'infusion_too_weak'>['values']
          if (strongestAbvPercent !== null) solve({ abvPercent: strongestAbvPercent * (1 - 1e-6), sugarGPerL })
          if (sweetestGPerL !== null && sweetestGPerL > 1)
            expect(
              unlessRefused(() => solve({ abvPercent, sugarGPerL: sweetestGPerL * (1 - 1e-6) })) ?? 'not soluble',
            ).toBeTruthy()
        }
      },
    ),
    { seed: SEED, numRuns: runs(150, 2000) },
  )
})

test('what is added to a liqueur brings it to both targets, whatever sweetens', () => {
  let solved = 0
  fc.assert(
    fc.property(
      number(20, 45),
      number(0, 250),
      number(20, 45),
      number(60, 300),
      fc.option(number(60, 96), { nil: null }),
      material,
      (percent, gPerL, abvPercent, sugarGPerL, spiritPercent, sweetener) => {
        const liqueur = portion(1000, percent, gPerL)
        const spiritAbv = spiritPercent === null ? null : exactly(spiritPercent)
        const found = unlessRefused(() => adjust(liqueur, { abvPercent, sugarGPerL }, spiritAbv, sweetener))
        if (found === null) return
        solved += 1
        const { spiritMl, waterG, sugarG } = found
        const spirits = spiritPercent === null || spiritMl.value === 0 ? [] : [portion(spiritMl.value, spiritPercent)]
        const made = poured([liqueur, ...spirits], waterG.value, sweetener, sugarG.value)
        expectClose(made.abvPercent.value, abvPercent)
        expectClose(made.sugarGPerL.value, sugarGPerL)
        // The least addition: of three things one is not wanted.
        if (spiritPercent !== null) expect([spiritMl, waterG, sugarG].some(({ value }) => value === 0)).toBe(true)
      },
    ),
    { seed: SEED, numRuns: runs(200, 4000) },
  )
  expect(solved).toBeGreaterThan(60)
})

test('sweetness alone: what sweetens alone leaves the strength that is told', () => {
  fc.assert(
    fc.property(number(20, 45), number(0, 100), number(101, 250), material, (percent, gPerL, toGPerL, sweetener) => {
      const liqueur = portion(1000, percent, gPerL)
      const targets = sweetnessAlone(liquidOf(valuesOf(liqueur)), toGPerL, gramOf(sweetener))
      const { waterG, spiritMl, outcome } = adjust(liqueur, targets, null, sweetener)
      expect(waterG.value).toBeLessThan(1e-5)
      expect(spiritMl.value).toBe(0)
      expectClose(outcome.sugarGPerL.value, toGPerL)
    }),
    { seed: SEED, numRuns: runs(100, 1000) },
  )
})

test('three ways are worked out of what is named, and differ in their water', () => {
  const ways = (sweetener?: MaterialId) => styles(portion(920, 82), {}, null, { sweetener })
  for (const [at, { syrup: honeyed }] of ways('honey').entries()) {
    const plain = ways()[at]!.syrup
    expect(honeyed.sweetener).toBe('honey')
    // USDA SR 19296: 82.12 g of sugars in 100 g of honey.
    expect(honeyed.sugarG.value / plain.sugarG.value).toBeCloseTo(1 / 0.8212, 2)
    expect(plain.waterG.value - honeyed.waterG.value).toBeGreaterThan(0.1 * honeyed.sugarG.value)
  }
})

test('what is less sweet by itself than what is wished for is refused with what it holds', () => {
  const wish = { by: 'strength_and_sweetness', abvPercent: 20, sugarGPerL: 600 } as const
  const refused = () => syrup(portion(1000, 95), wish, null, { sweetener: 'syrup_1_1_cup' })
  expect(refused).toThrow(DomainError)
  try {
    refused()
  } catch (error) {
    const { problem, values } = error as DomainError<'sweetener_too_thin'>
    expect(problem).toBe('sweetener_too_thin')
    // 1:1 by the cup: 553 g of sugar in a litre (ICUMSA SPS-4 at 45.8 %).
    expect(values.sweetenerGPerL).toBeCloseTo(553, -1)
  }
})

test('a ratio of a syrup by weight is of what is weighed', () => {
  const { sugarG, waterG } = syrup(
    portion(920, 82),
    { by: 'strength_and_ratio', abvPercent: 30, sugarPerWater: 2 },
    null,
    { sweetener: 'honey' },
  )
  expect(sugarG.value / waterG.value).toBeCloseTo(2, 9)
  expect(sugarsShare('honey')).toBeLessThan(1)
})
