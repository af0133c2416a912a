import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { adjust } from '../../../core/recipe/solve/adjust.ts'
import { dilute } from '../../../core/recipe/solve/dilute.ts'
import { mix } from '../../../core/recipe/solve/mix.ts'
import { type Syrup, syrup } from '../../../core/recipe/solve/syrup.ts'
import type { SyrupWish } from '../../../core/recipe/solve/syrup-for.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import {
  infusionAndTargets,
  plainReading,
  portion,
  poured,
  relative,
  share,
  sweetness,
  waterPortion,
} from './kitchens.ts'

vi.setConfig({ testTimeout: runs(20_000, 600_000) })

const parameters = { seed: SEED, numRuns: runs(80, 10_000) }

/** What an infusion, water by volume and sugar make. */
const made = (of: ReturnType<typeof portion>, { waterMl, sugarG }: Pick<Syrup, 'waterMl' | 'sugarG'>) =>
  mix({ portions: [of, waterPortion(poured(waterMl), 'volume')], sweetenings: whiteSugar(poured(sugarG)) }).outcome

const near = (value: number, target: number) => expect(relative(value, target)).toBeLessThan(1e-6)

describe('fed back through mix, a solve returns its targets to 1e-6', () => {
  test('syrup by strength and sweetness, and the other two kinds by its own ratio', () => {
    fc.assert(
      fc.property(infusionAndTargets, ({ infusion, targets }) => {
        const first = syrup(infusion, { by: 'strength_and_sweetness', ...targets })
        const sugarPerWater = first.sugarG.value / first.waterG.value
        const { abvPercent, sugarGPerL } = targets
        const wishes: SyrupWish[] = [
          { by: 'strength_and_sweetness', abvPercent, sugarGPerL },
          { by: 'strength_and_ratio', abvPercent, sugarPerWater },
          { by: 'sweetness_and_ratio', sugarGPerL, sugarPerWater },
        ]
        for (const wish of wishes) {
          const solved = syrup(infusion, wish)
          const outcome = made(infusion, solved)
          near(outcome.abvPercent.value, abvPercent)
          near(outcome.sugarGPerL.value, sugarGPerL)
          near(outcome.volumeMl.value, solved.outcome.volumeMl.value)
          near(solved.sugarG.value / solved.waterG.value, sugarPerWater)
        }
      }),
      parameters,
    )
  })

  test('syrup bounded by the final volume', () => {
    fc.assert(
      fc.property(infusionAndTargets, share(0.05, 0.99), ({ infusion, targets }, part) => {
        const wish: SyrupWish = { by: 'strength_and_sweetness', ...targets }
        const atMostMl = part * syrup(infusion, wish).outcome.volumeMl.value
        const solved = syrup(infusion, wish, atMostMl)
        const outcome = made({ ...infusion, amount: poured(solved.infusionMl) }, solved)
        near(outcome.volumeMl.value, atMostMl)
        near(outcome.abvPercent.value, targets.abvPercent)
        near(outcome.sugarGPerL.value, targets.sugarGPerL)
      }),
      parameters,
    )
  })

  test('dilute, of one spirit or several', () => {
    const spirits = fc.array(plainReading, { minLength: 1, maxLength: 3 })
    fc.assert(
      fc.property(spirits, share(0.05, 0.999), (portions, down) => {
        const before = mix({ portions, sweetenings: whiteSugar(exactly(0)) }).outcome.abvPercent.value
        const { waterMl } = dilute(portions, before * down)
        const water = waterPortion(poured(waterMl), 'volume')
        near(
          mix({ portions: [...portions, water], sweetenings: whiteSugar(exactly(0)) }).outcome.abvPercent.value,
          before * down,
        )
      }),
      parameters,
    )
  })

  test('adjust, up or down, with a spirit at hand', () => {
    const wish = fc.record({
      from: share(10, 45),
      to: share(10, 40),
      sugarGPerL: sweetness(200),
      sweeter: share(0.9, 1.6),
      spirit: share(70, 100),
    })
    let reached = 0
    fc.assert(
      fc.property(wish, ({ from, to, sugarGPerL, sweeter, spirit }) => {
        const liqueur = portion(1500, from, sugarGPerL)
        const targets = { abvPercent: to, sugarGPerL: sugarGPerL * sweeter }
        const { spiritMl, waterMl, sugarG } = adjust(liqueur, targets, exactly(spirit))
        const portions = [
          liqueur,
          { ...portion(1, spirit), amount: poured(spiritMl) },
          waterPortion(poured(waterMl), 'volume'),
        ]
        const { outcome } = mix({ portions, sweetenings: whiteSugar(poured(sugarG)) })
        near(outcome.abvPercent.value, to)
        expect(Math.abs(outcome.sugarGPerL.value - targets.sugarGPerL)).toBeLessThan(1e-6 * (1 + targets.sugarGPerL))
        for (const amount of [spiritMl, waterMl, sugarG]) expect(amount.value).toBeGreaterThanOrEqual(0)
        reached++
      }),
      parameters,
    )
    expect(reached).toBe(parameters.numRuns)
  })

  test.each([7, 33.3, 40, 41.3, 70, 95, 96, 100])('the strength it has already, %s % vol, takes nothing', (percent) => {
    const spirit = portion(700, percent)
    expect(dilute([spirit], percent).waterMl.value).toBe(0)
    const wishes: SyrupWish[] = [
      { by: 'strength_and_sweetness', abvPercent: percent, sugarGPerL: 0 },
      { by: 'strength_and_ratio', abvPercent: percent, sugarPerWater: 1 },
      { by: 'sweetness_and_ratio', sugarGPerL: 0, sugarPerWater: 1 },
    ]
    for (const wish of wishes) {
      const { waterG, sugarG } = syrup(spirit, wish)
      expect(waterG.value, wish.by).toBeCloseTo(0, 6)
      expect(sugarG.value, wish.by).toBeCloseTo(0, 6)
    }
    expect(adjust(spirit, { abvPercent: percent, sugarGPerL: 0 }, null).waterMl.value).toBeCloseTo(0, 6)
  })
})
