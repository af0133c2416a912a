import { describe, expect, it } from 'vitest'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import type { OwnSyrup } from '../../../core/recipe/plan/own-syrup.ts'
import { plan } from '../../../core/recipe/plan/plan.ts'
import { START, spirit, wish } from './wishes.ts'

const NONE = { abvPercent: undefined, sugarGPerL: undefined }

const planOf = (
  own: OwnSyrup,
  named: Partial<typeof NONE | { abvPercent: number; sugarGPerL: number }> = {},
  rest = {},
) =>
  plan(
    wish([{ id: 'lemon_peel', massG: 90 }], {
      spirits: [spirit(1000, 95)],
      named: { ...NONE, ...named, own },
      start: START,
      ...rest,
    }),
  )

// Common practice, no source: as much syrup as spirit, of sugar and water in equal measures.
describe('a recipe with its own water and sugar', () => {
  it.each([
    [1000, 700, {}],
    [400, 400, {}],
    [1500, 0, {}],
    [900, 500, { sweetener: 'honey' }],
    [900, 300, { filler: 'apple_juice' }],
  ] as const)('is planned with %d g of water and %d g of what sweetens', (waterG, sugarG, rest) => {
    const made = planOf({ waterG, sugarG }, {}, rest)
    expect(made.waterG.value).toBeCloseTo(waterG, 4)
    expect(made.sugarG.value).toBeCloseTo(sugarG, 4)
  })

  it('is sweetened as usual where it tells no sugar', () => {
    const made = planOf({ waterG: 1000, sugarG: null })
    expect(made.waterG.value).toBeCloseTo(1000, 4)
    expect(made.targets.sugarGPerL).toBeCloseTo(190, 6)
  })

  it('gives way in its water to a wished strength, in its sugar to a wished sweetness', () => {
    const weaker = planOf({ waterG: 900, sugarG: 600 }, { abvPercent: 25 })
    expect(weaker.targets.abvPercent).toBe(25)
    expect(weaker.sugarG.value).toBeCloseTo(600, 4)
    expect(weaker.waterG.value).toBeGreaterThan(1000)
    const drier = planOf({ waterG: 900, sugarG: 600 }, { sugarGPerL: 120 })
    expect(drier.waterG.value).toBeCloseTo(900, 4)
    expect(drier.targets.sugarGPerL).toBeCloseTo(120, 6)
    const both = planOf({ waterG: 900, sugarG: 600 }, { abvPercent: 28, sugarGPerL: 150 })
    expect(both.targets).toEqual({ abvPercent: 28, sugarGPerL: 150 })
  })

  it('is refused where its sugar leaves no room for the wished strength, and where its water is too much to keep', () => {
    expect(() => planOf({ waterG: 900, sugarG: 1500 }, { abvPercent: 60 })).toThrow('infusion_too_weak')
    expect(() => planOf({ waterG: 20_000, sugarG: 900 })).toThrow('drink_ferments')
  })

  it('adds to sugar that is in the jar', () => {
    const sweetenings = [{ material: 'white_sugar', massG: exactly(200) }] as const
    const made = planOf({ waterG: 800, sugarG: 0 }, {}, { sweetenings })
    expect(made.sugarG.value).toBeCloseTo(0, 4)
    expect(made.targets.sugarGPerL).toBeGreaterThan(80)
  })
})
