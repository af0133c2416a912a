import fc from 'fast-check'
import { expect, test, vi } from 'vitest'
import {
  abvPercent,
  type Liquid,
  mix,
  spirit,
  sugar,
  sugarGPerL,
  volumeMl,
  water,
} from '../../../core/liquid/liquid.ts'
import { adjust } from '../../../core/recipe/solve/adjust.ts'
import type { Amounts } from '../../../core/recipe/solve/amounts-for.ts'
import { dilute } from '../../../core/recipe/solve/dilute.ts'
import { type SyrupWish, syrupFor } from '../../../core/recipe/solve/syrup-for.ts'
import { runs, SEED } from '../../runs.ts'
import { infusionAndTargets, portion, share } from './kitchens.ts'

vi.setConfig({ testTimeout: runs(20_000, 600_000) })

const parameters = { seed: SEED, numRuns: runs(60, 10_000) }

const finished = (from: Liquid, { waterG, sugarG }: Amounts) => mix(from, water(waterG), sugar(sugarG))

test('a stronger wish takes less water and less sugar, a sweeter one more sugar and less water', () => {
  fc.assert(
    fc.property(
      infusionAndTargets,
      share(1.001, 1.05),
      ({ infusion: { amount, abvPercent: percent }, targets }, more) => {
        const from = spirit({ volumeMl: amount.value, abvPercent: percent.value })
        const wished = (to: number, gPerL: number) =>
          syrupFor(from, { by: 'strength_and_sweetness', abvPercent: to, sugarGPerL: gPerL })
        const plain = wished(targets.abvPercent, targets.sugarGPerL)
        const stronger = wished(targets.abvPercent * more, targets.sugarGPerL)
        const sweeter = wished(targets.abvPercent, targets.sugarGPerL * more)
        expect(stronger.waterG).toBeLessThan(plain.waterG)
        expect(stronger.sugarG).toBeLessThan(plain.sugarG)
        expect(volumeMl(finished(from, stronger))).toBeLessThan(volumeMl(finished(from, plain)))
        expect(sweeter.sugarG).toBeGreaterThan(plain.sugarG)
        expect(sweeter.waterG).toBeLessThan(plain.waterG)
      },
    ),
    parameters,
  )
})

test('a thicker syrup to one strength is sweeter and takes less water, to one sweetness it leaves more strength', () => {
  fc.assert(
    fc.property(
      infusionAndTargets,
      share(0.3, 2),
      share(1.01, 1.5),
      ({ infusion: { amount, abvPercent: percent }, targets }, ratio, more) => {
        const from = spirit({ volumeMl: amount.value, abvPercent: percent.value })
        const by = (sugarPerWater: number) =>
          syrupFor(from, { by: 'strength_and_ratio', abvPercent: targets.abvPercent, sugarPerWater })
        const [thin, thick] = [by(ratio), by(ratio * more)]
        const gPerL = sugarGPerL(finished(from, thin))
        expect(sugarGPerL(finished(from, thick))).toBeGreaterThan(gPerL)
        expect(thick.waterG).toBeLessThan(thin.waterG)
        const wish: SyrupWish = { by: 'sweetness_and_ratio', sugarGPerL: gPerL, sugarPerWater: ratio * more }
        expect(abvPercent(finished(from, syrupFor(from, wish)))).toBeGreaterThan(targets.abvPercent)
      },
    ),
    parameters,
  )
})

test('more infusion, or a stronger one, takes more of both', () => {
  fc.assert(
    fc.property(
      infusionAndTargets,
      share(1.001, 1.04),
      ({ infusion: { amount, abvPercent: percent }, targets }, more) => {
        const wish: SyrupWish = { by: 'strength_and_sweetness', ...targets }
        const amounts = (volumeMl: number, abvPercent: number) => syrupFor(spirit({ volumeMl, abvPercent }), wish)
        const plain = amounts(amount.value, percent.value)
        for (const one of [amounts(amount.value * more, percent.value), amounts(amount.value, percent.value * more)]) {
          expect(one.sugarG).toBeGreaterThan(plain.sugarG)
          expect(one.waterG).toBeGreaterThan(plain.waterG)
        }
      },
    ),
    parameters,
  )
})

test('a lower strength takes more water to dilute to', () => {
  fc.assert(
    fc.property(share(5, 96), share(0.1, 0.95), share(0.8, 0.99), (percent, down, further) => {
      const waterMl = (toPercent: number) => dilute([portion(1000, percent)], toPercent).waterMl.value
      expect(waterMl(percent * down * further)).toBeGreaterThan(waterMl(percent * down))
    }),
    parameters,
  )
})

test('a liqueur further from its target takes more of what it lacks', () => {
  fc.assert(
    fc.property(share(10, 25), share(50, 150), share(1.01, 1.3), (percent, gPerL, more) => {
      const add = (to: number, sweet: number) =>
        adjust(portion(1000, percent, gPerL), { abvPercent: to, sugarGPerL: sweet }, { value: 95, plusMinus: 0 })
      const plain = add(percent * 1.1, gPerL * 1.2)
      expect(add(percent * 1.1 * more, gPerL * 1.2).spiritMl.value).toBeGreaterThan(plain.spiritMl.value)
      expect(add(percent * 1.1, gPerL * 1.2 * more).sugarG.value).toBeGreaterThan(plain.sugarG.value)
    }),
    parameters,
  )
})
