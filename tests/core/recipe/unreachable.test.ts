import { describe, expect, test } from 'vitest'
import { DomainError, type Problems } from '../../../core/domain-error.ts'
import { abvPercent, spirit } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { adjust } from '../../../core/recipe/solve/adjust.ts'
import { styles } from '../../../core/recipe/solve/styles.ts'
import { syrup } from '../../../core/recipe/solve/syrup.ts'
import type { SyrupWish } from '../../../core/recipe/solve/syrup-for.ts'
import { wishOf } from '../../../core/recipe/solve/syrup-wish.ts'
import { portion } from './kitchens.ts'

/** The values of the problem that an act throws; another problem, or none, fails. */
const refusal = <Key extends keyof Problems>(key: Key, act: () => unknown): Problems[Key] => {
  try {
    act()
  } catch (error) {
    if (error instanceof DomainError && error.problem === key) return error.values as Problems[Key]
    throw error
  }
  throw new Error('nothing was refused')
}

const to = (percent: number, sugarGPerL: number): SyrupWish => ({
  by: 'strength_and_sweetness',
  abvPercent: percent,
  sugarGPerL,
})

describe('the nearest that a refusal names can be had', () => {
  test.each([
    [28, 30, 0],
    [28, 27, 250],
    [40, 38, 120],
    [96, 92, 100],
    [60, 55, 150],
    [96, 60.2, 600],
    [30, 29, 600],
    [12, 11.9, 300],
    [5, 6, 0],
  ])('an infusion of %s per cent cannot become %s per cent with %s g/L', (own, wished, sugarGPerL) => {
    const infusion = portion(1000, own)
    const values = refusal('infusion_too_weak', () => syrup(infusion, to(wished, sugarGPerL)))
    const { strongestAbvPercent: strongest, sweetestGPerL: sweetest } = values
    expect(strongest !== null || sweetest !== null).toBe(true)
    if (strongest !== null) {
      expect(strongest).toBeLessThanOrEqual(Math.min(own, wished) * (1 + 1e-9))
      const { outcome, waterG } = syrup(infusion, to(strongest * (1 - 1e-6), sugarGPerL))
      expect(outcome.sugarGPerL.value).toBeCloseTo(sugarGPerL, 3)
      expect(waterG.value).toBeLessThan(0.1)
    }
    if (sweetest !== null) {
      const { outcome } = syrup(infusion, to(wished, sweetest * (1 - 1e-6)))
      expect(outcome.abvPercent.value).toBeCloseTo(wished, 3)
    }
  })

  test('too much sugar to stay dissolved: the largest that does', () => {
    const infusion = portion(1000, 90)
    const { largestGPerL, sugarGPerL } = refusal('sugar_crystallises', () => syrup(infusion, to(40, 600)))
    expect(sugarGPerL).toBeCloseTo(600, 6)
    expect(syrup(infusion, to(40, largestGPerL)).sugarStays).not.toBe('refused')
  })

  test('a syrup that is no sweeter than the wish: anything less', () => {
    const wish = (sugarGPerL: number): SyrupWish => ({ by: 'sweetness_and_ratio', sugarGPerL, sugarPerWater: 0.1 })
    const { syrupGPerL } = refusal('syrup_not_sweet_enough', () => syrup(portion(1000, 40), wish(250)))
    expect(syrup(portion(1000, 40), wish(syrupGPerL * 0.9)).outcome.sugarGPerL.value).toBeCloseTo(syrupGPerL * 0.9, 6)
  })

  test('strength, sweetness and a ratio that clashes: the ratio that does not', () => {
    const liquid = spirit({ volumeMl: 920, abvPercent: 90 })
    const named = { abvPercent: 30, sugarGPerL: 250 }
    const values = refusal('targets_clash', () => wishOf(liquid, { ...named, sugarPerWater: 1 }))
    const sugarPerWater = values.neededSugarPerWater!
    expect(wishOf(liquid, { ...named, sugarPerWater })).toEqual(to(30, 250))
    const { outcome } = syrup(portion(920, 90), { by: 'strength_and_ratio', abvPercent: 30, sugarPerWater })
    expect(outcome.sugarGPerL.value).toBeCloseTo(250, 6)
  })

  test('a liqueur to mend without a spirit: what water alone and sugar alone leave', () => {
    const liqueur = portion(1000, 35, 300)
    const values = refusal('adjust_needs_spirit', () => adjust(liqueur, { abvPercent: 30, sugarGPerL: 200 }, null))
    for (const sugarGPerL of [values.leastSugarGPerL!, values.mostSugarGPerL!]) {
      const { outcome } = adjust(liqueur, { abvPercent: 30, sugarGPerL }, null)
      expect(outcome.sugarGPerL.value).toBeCloseTo(sugarGPerL, 6)
    }
  })

  test('a spirit too weak: just under the strength it names', () => {
    const solve = (percent: number) =>
      adjust(portion(1000, 25, 200), { abvPercent: percent, sugarGPerL: 200 }, exactly(40))
    const { strongestAbvPercent } = refusal('adjust_spirit_too_weak', () => solve(45))
    expect(solve(strongestAbvPercent * 0.999).outcome.abvPercent.value).toBeCloseTo(strongestAbvPercent * 0.999, 6)
  })
})

test('where nothing fits into a litre, the wish is refused with the person’s own numbers', () => {
  const values = refusal('no_room_for_water', () => syrup(portion(1000, 96), to(80, 400)))
  expect(values).toEqual({ abvPercent: 80, sugarGPerL: 400 })
})

describe('styles', () => {
  const strengths = Array.from({ length: 92 }, (_, index) => index + 5)

  test('every infusion of 5 to 96 % vol gets three, at 30 % vol or what sugar alone leaves of its strength', () => {
    for (const own of strengths) {
      const found = styles(portion(1000, own), {}, null)
      expect(found.length, `${own} % vol`).toBe(3)
      for (const { wish, syrup: made } of found) {
        expect(made.waterG.value, `${own} % vol`).toBeGreaterThanOrEqual(0)
        expect(made.outcome.abvPercent.value).toBeCloseTo((wish as { abvPercent: number }).abvPercent, 6)
        expect(made.outcome.abvPercent.value).toBeLessThanOrEqual(Math.min(30, own) + 1e-9)
      }
    }
  })

  test.each([
    ['a sweetness', { sugarGPerL: 250 }],
    ['a thin syrup', { sugarPerWater: 0.5 }],
    ['an even syrup', { sugarPerWater: 1 }],
    ['a low strength', { abvPercent: 4 }],
  ])('with %s named, every infusion of 5 to 96 per cent gets some', (_, named) => {
    for (const own of strengths) {
      const found = styles(portion(1000, own), named, null)
      expect(found.length).toBeGreaterThan(0)
      for (const { syrup: made } of found) {
        const of = made.outcome
        if ('sugarGPerL' in named) expect(of.sugarGPerL.value).toBeCloseTo(named.sugarGPerL!, 6)
        if ('abvPercent' in named) expect(of.abvPercent.value).toBeCloseTo(named.abvPercent!, 6)
        if ('sugarPerWater' in named) expect(made.sugarG.value / made.waterG.value).toBeCloseTo(named.sugarPerWater!, 9)
        expect(abvPercent(of.liquid)).toBeLessThanOrEqual(own + 1e-9)
      }
    }
  })
})
