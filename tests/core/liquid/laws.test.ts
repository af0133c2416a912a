import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  abvFromDensity,
  abvFromMassFraction,
  ethanolWaterDensityKgPerM3,
  massFractionFromAbv,
} from '../../../core/liquid/ethanol-water.ts'
import { freezesAtC } from '../../../core/liquid/freezing.ts'
import {
  abvPercent,
  densityGPerMl,
  ethanolG,
  type Liquid,
  liquidFrom,
  liquidFromMass,
  massG,
  mix,
  part,
  spirit,
  sugar,
  sugarG,
  sugarGPerL,
  volumeMl,
  water,
  waterG,
} from '../../../core/liquid/liquid.ts'
import { runs, SEED } from '../../runs.ts'

const settings = { seed: SEED, numRuns: runs(300, 10_000) }
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
/** Grams or millilitres, nothing at all among them; a share of 5e-324 g would vanish and say nothing about liquids. */
const amount = fc.oneof(fc.constant(0), number(1e-3, 5000))

const percent = number(0, 100)
const tempC = number(-20, 40)
const liquids = fc
  .record({
    volumeMl: amount,
    abvPercent: fc.oneof(fc.constantFrom(0, 100), number(0.01, 99.99)),
    waterG: amount,
    sugarG: amount,
  })
  .map((of): Liquid => mix(spirit(of), water(of.waterG), sugar(of.sugarG)))
/** Strength and sweetness that leave room for each other. */
const compositions = fc.tuple(number(0, 1), number(0, 1400)).map(([share, sugarGPerL]) => ({
  sugarGPerL,
  abvPercent: share * 100 * (1 - sugarGPerL * 0.00065),
}))

const grams = (liquid: Liquid) => [ethanolG(liquid), waterG(liquid), sugarG(liquid)]
const close = (a: number, b: number) => {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(b)))
}
const same = (a: Liquid, b: Liquid) => {
  for (const [i, mass] of grams(a).entries()) close(mass, grams(b)[i]!)
}

describe(`laws, ${settings.numRuns} runs, seed ${SEED}`, () => {
  test('mixing does not mind the order', () => {
    fc.assert(
      fc.property(liquids, liquids, (a, b) => same(mix(a, b), mix(b, a))),
      settings,
    )
  })
  test('mixing does not mind what is mixed first', () => {
    fc.assert(
      fc.property(liquids, liquids, liquids, (a, b, c) => {
        same(mix(mix(a, b), c), mix(a, mix(b, c)))
        same(mix(a, b, c), mix(mix(a, b), c))
      }),
      settings,
    )
  })
  test('mass is kept', () => {
    fc.assert(
      fc.property(liquids, liquids, (a, b) => close(massG(mix(a, b)), massG(a) + massG(b))),
      settings,
    )
  })
  test('a share has the share of everything and the same strength, sweetness and density', () => {
    fc.assert(
      fc.property(liquids, number(0.001, 1), (liquid, share) => {
        const some = part(liquid, share)
        close(massG(some), share * massG(liquid))
        close(volumeMl(some), share * volumeMl(liquid))
        close(abvPercent(some), abvPercent(liquid))
        close(sugarGPerL(some), sugarGPerL(liquid))
        close(densityGPerMl(some), densityGPerMl(liquid))
        same(mix(some, part(liquid, 1 - share)), liquid)
      }),
      settings,
    )
  })
  test('strength → density → strength comes back at every temperature', () => {
    fc.assert(
      fc.property(percent, tempC, (abvPercent, t) => {
        const density = ethanolWaterDensityKgPerM3(massFractionFromAbv(abvPercent), t)
        expect(Math.abs(abvFromDensity(density, t) - abvPercent)).toBeLessThanOrEqual(1e-9)
      }),
      settings,
    )
  })
  test('strength by volume → by mass → by volume comes back, at 20 °C and at 60 °F', () => {
    fc.assert(
      fc.property(percent, fc.constantFrom(20, 140 / 9), (abvPercent, scaleC) => {
        const again = abvFromMassFraction(massFractionFromAbv(abvPercent, scaleC), scaleC)
        expect(Math.abs(again - abvPercent)).toBeLessThanOrEqual(1e-9)
      }),
      settings,
    )
  })
  test('density falls with strength at every temperature, also below freezing', () => {
    fc.assert(
      fc.property(number(0, 1), number(0, 1), tempC, (p, q, t) => {
        fc.pre(Math.abs(p - q) > 1e-6)
        const [less, more] = [
          ethanolWaterDensityKgPerM3(Math.min(p, q), t),
          ethanolWaterDensityKgPerM3(Math.max(p, q), t),
        ]
        expect(more).toBeLessThan(less)
      }),
      settings,
    )
  })
  test('spirit of 10 % mass and more grows lighter as it warms', () => {
    fc.assert(
      fc.property(number(0.1, 1), number(0, 39), (p, t) => {
        expect(ethanolWaterDensityKgPerM3(p, t + 1)).toBeLessThan(ethanolWaterDensityKgPerM3(p, t))
      }),
      settings,
    )
  })
  test('volume, strength and sweetness → liquid → the same', () => {
    fc.assert(
      fc.property(compositions, number(0.1, 1e5), (of, ml) => {
        const liquid = liquidFrom({ ...of, volumeMl: ml })
        close(volumeMl(liquid), ml)
        close(abvPercent(liquid), of.abvPercent)
        close(sugarGPerL(liquid), of.sugarGPerL)
      }),
      settings,
    )
  })
  test('mass, strength and sweetness → liquid → the same', () => {
    fc.assert(
      fc.property(compositions, number(0.1, 1e5), (of, g) => {
        const liquid = liquidFromMass({ ...of, massG: g })
        close(massG(liquid), g)
        close(abvPercent(liquid), of.abvPercent)
        close(sugarGPerL(liquid), of.sugarGPerL)
      }),
      settings,
    )
  })
  test('more sugar lowers the first ice, more water raises it', () => {
    fc.assert(
      fc.property(liquids, number(1, 500), (liquid, g) => {
        fc.pre(waterG(liquid) > 1)
        expect(freezesAtC(mix(liquid, sugar(g)))).toBeLessThanOrEqual(freezesAtC(liquid))
        expect(freezesAtC(mix(liquid, water(g)))).toBeGreaterThanOrEqual(freezesAtC(liquid))
      }),
      settings,
    )
  })
})
