import fc from 'fast-check'
import { expect, test, vi } from 'vitest'
import { ethanolG, liquidFrom, massG, sugarG, waterG } from '../../../core/liquid/liquid.ts'
import { exactly, type Measured } from '../../../core/quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { adjust } from '../../../core/recipe/solve/adjust.ts'
import { dilute } from '../../../core/recipe/solve/dilute.ts'
import { mix } from '../../../core/recipe/solve/mix.ts'
import type { Outcome } from '../../../core/recipe/solve/outcome.ts'
import { syrup } from '../../../core/recipe/solve/syrup.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import { anyReading, infusionAndTargets, plainReading, portion, relative, share, waterPortion } from './kitchens.ts'

vi.setConfig({ testTimeout: runs(20_000, 600_000) })

const parameters = { seed: SEED, numRuns: runs(80, 10_000) }

const massOf = (portions: readonly Portion[]) =>
  portions.reduce((sum, each) => sum + massG(liquidOf(valuesOf(each))), 0)

/** What went in came out, gram for gram; and the grams are where the outcome says. */
const expectKept = (outcome: Outcome, inG: number) => {
  expect(relative(outcome.massG.value, inG)).toBeLessThan(1e-9)
  expect(relative(massG(outcome.liquid), inG)).toBeLessThan(1e-9)
  expect(relative(outcome.densityGPerMl.value * outcome.volumeMl.value, inG)).toBeLessThan(1e-9)
  expect(relative(outcome.sugarGPerL.value * outcome.volumeMl.value, 1000 * sugarG(outcome.liquid))).toBeLessThan(1e-9)
}

test('mix keeps every gram, and the order of the portions does not matter', () => {
  const some = fc.array(anyReading, { minLength: 1, maxLength: 5 })
  fc.assert(
    fc.property(some, share(0.1, 15), (portions, gPer) => {
      const sugar = exactly((gPer * massOf(portions)) / 1000)
      const { outcome } = mix({ portions, sweetenings: whiteSugar(sugar) })
      expectKept(outcome, massOf(portions) + sugar.value)
      const turned = mix({ portions: [...portions].reverse(), sweetenings: whiteSugar(sugar) }).outcome
      for (const [name, one] of Object.entries(outcome)) {
        if (name === 'liquid') continue
        const other = turned[name as Exclude<keyof Outcome, 'liquid'>]
        expect(relative((one as Measured).value, other.value), name).toBeLessThan(1e-12)
        expect(relative((one as Measured).plusMinus, other.plusMinus), name).toBeLessThan(1e-6)
      }
    }),
    parameters,
  )
})

test('a blend of blends is the blend of all', () => {
  fc.assert(
    fc.property(anyReading, anyReading, anyReading, (a, b, c) => {
      const first = mix({ portions: [a, b], sweetenings: whiteSugar(exactly(0)) }).outcome
      const { value: abvPercent } = first.abvPercent
      const again = portion(first.volumeMl.value, abvPercent, first.sugarGPerL.value)
      const [stepwise, atOnce] = [
        [again, c],
        [a, b, c],
      ].map((portions) => mix({ portions, sweetenings: whiteSugar(exactly(0)) }).outcome.liquid) as [
        Outcome['liquid'],
        Outcome['liquid'],
      ]
      for (const part of [ethanolG, waterG, sugarG]) expect(relative(part(stepwise), part(atOnce))).toBeLessThan(1e-9)
    }),
    parameters,
  )
})

test('syrup keeps every gram, whole or bounded', () => {
  fc.assert(
    fc.property(infusionAndTargets, fc.option(share(50, 3000)), ({ infusion, targets }, atMostMl) => {
      const made = syrup(infusion, { by: 'strength_and_sweetness', ...targets }, atMostMl)
      const used = made.infusionMl.value / infusion.amount.value
      expect(used <= 1 + 1e-12).toBe(true)
      expectKept(made.outcome, massOf([infusion]) * used + made.waterG.value + made.sugarG.value)
      expect(relative(made.syrupG.value, made.waterG.value + made.sugarG.value)).toBeLessThan(1e-9)
      expect(relative(ethanolG(made.outcome.liquid), used * ethanolG(liquidOf(valuesOf(infusion))))).toBeLessThan(1e-9)
      if (atMostMl !== null) expect(made.outcome.volumeMl.value).toBeLessThanOrEqual(atMostMl * (1 + 1e-9))
      if (Math.abs(used - 1) > 1e-9) expect(made.leftMl > 0).toBe(used < 1)
    }),
    parameters,
  )
})

test('dilute keeps every gram and all of the ethanol', () => {
  const spirits = fc.array(plainReading, { minLength: 1, maxLength: 3 })
  fc.assert(
    fc.property(spirits, share(0.1, 0.999), (portions, down) => {
      const { outcome: before } = mix({ portions, sweetenings: whiteSugar(exactly(0)) })
      const { outcome, waterG: added } = dilute(portions, before.abvPercent.value * down)
      expectKept(outcome, massOf(portions) + added.value)
      expect(relative(ethanolG(outcome.liquid), ethanolG(before.liquid))).toBeLessThan(1e-9)
    }),
    parameters,
  )
})

test('adjust keeps every gram', () => {
  const wish = fc.record({ from: share(15, 40), to: share(15, 40), sugarGPerL: share(0, 150), more: share(30, 250) })
  fc.assert(
    fc.property(wish, ({ from, to, sugarGPerL, more }) => {
      const targets = { abvPercent: to, sugarGPerL: sugarGPerL + more }
      const liqueur = portion(1500, from, sugarGPerL)
      const made = adjust(liqueur, targets, exactly(95))
      const spirit = massG(liquidFrom({ volumeMl: made.spiritMl.value, abvPercent: 95, sugarGPerL: 0 }))
      expectKept(made.outcome, massOf([liqueur]) + spirit + made.waterG.value + made.sugarG.value)
      expect(relative(made.waterG.value, massOf([waterPortion(exactly(made.waterMl.value), 'volume')]))).toBeLessThan(
        1e-9,
      )
    }),
    parameters,
  )
})
