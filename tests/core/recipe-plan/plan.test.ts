import { describe, expect, it, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { readInfusion } from '../../../core/jar/state/read-infusion.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { plan } from '../../../core/recipe/plan/plan.ts'
import { steep } from '../../../core/recipe/steep.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { refusal, refusedValues } from '../quantity/refusal.ts'
import { spirit, wish } from './wishes.ts'

const named = (abvPercent?: number, sugarGPerL?: number) => ({ abvPercent, sugarGPerL })

/** Issue 3, "Common practice, no source, each planned without refusal or caution against it". */
describe('common practice', () => {
  const bottle = [{ count: null, volumeMl: 500, size: null }]
  test.each([
    ["one lemon's zest per 100 ml of 95 %", [{ id: 'lemon_peel', massG: 105 }], 1000, 95],
    ['200 g of cracked coffee in half a litre', [{ id: 'coffee_cracked', massG: 200 }], 500, 60],
    ['sliced ginger in half a litre', [{ id: 'ginger', massG: 100 }], 500, 60],
    ['80 g of basil in half a litre', [{ id: 'basil', massG: 80 }], 500, 95],
    [
      'lemon, ginger and chilli together',
      [
        { id: 'lemon_peel', massG: 84 },
        { id: 'ginger', massG: 60 },
        { id: 'chilli_fresh', massG: 5 },
      ],
      700,
      95,
    ],
  ])('%s', (_, plants, ml, percent) => {
    const made = plan(wish(plants, { spirits: [spirit(ml, percent)], bottles: bottle }))
    expect(made.ceilings.warned).toEqual([])
    expect(made.steep.keeping).toBe('keeps')
    for (const { botanical, massG } of made.plants) {
      expect((massG.value * 1000) / made.steep.pouredMl).toBeLessThanOrEqual(botanical.dose.maxGPerL)
    }
  })

  it('the usual days hold the practised ones: 25 for lemon, 7 for coffee, 21 for ginger, 3 to 4 for basil', () => {
    const days = (id: string) => catalogue.find((each) => each.id === id)!.timesDays
    for (const [id, practised] of [
      ['lemon_peel', 25],
      ['coffee_cracked', 7],
      ['ginger', 21],
      ['basil', 3],
      ['basil', 4],
    ] as const) {
      expect(practised).toBeGreaterThanOrEqual(days(id).usualMin)
      expect(practised).toBeLessThanOrEqual(days(id).usualMax)
    }
  })
})

describe('from spirit or from bottles', () => {
  it('steeps at the strength asked for', () => {
    const made = plan(wish([{ id: 'ginger' }], { steepAtPercent: 60, spirits: [spirit(700, 95)] }))
    expect(made.dilutionMl.value).toBeGreaterThan(400)
    const bare = steep({ ...made.steeping, plants: [] })
    expect(bare.jarAbvPercent.value).toBeCloseTo(60, 9)
  })

  it('from the other end it needs what it would have made', () => {
    const one = plan(wish([{ id: 'lemon_peel' }], { named: named(30, 250) }))
    const back = plan(
      wish([{ id: 'lemon_peel' }], { spirits: [spirit(one.spiritMl.value, 95)], named: named(30, 250) }),
    )
    expect(back.outcome.volumeMl.value).toBeCloseTo(2000, 6)
    expect(back.filled).toEqual(one.filled)
  })

  it('keeps a typical dose under its ceiling, and refuses one that was asked for above it', () => {
    const low = plan(wish([{ id: 'sage' }], { spiritAbvPercent: exactly(40) }))
    expect(low.plants[0]!.capped).toBe(true)
    expect(refusal(() => plan(wish([{ id: 'wormwood', massG: 30 }], { spirits: [spirit(1000, 70)] })))).toBe(
      'over_ceiling over_ceiling',
    )
  })

  it('says what 40 % vodka can become after the plants’ water, and takes the nearest where nothing was named', () => {
    const call = () => plan(wish([{ id: 'lemon_peel' }], { spirits: [spirit(700, 40)], named: named(35, 300) }))
    expect(refusal(call)).toBe('unreachable infusion_too_weak')
    const { strongestAbvPercent } = refusedValues(call) as { strongestAbvPercent: number }
    const reached = plan(
      wish([{ id: 'lemon_peel' }], { spirits: [spirit(700, 40)], named: named(strongestAbvPercent - 0.01, 300) }),
    )
    expect(reached.outcome.sugarGPerL.value).toBeCloseTo(300, 6)
    const free = plan(wish([{ id: 'strawberry', massG: 700 }], { spirits: [spirit(700, 40)] }))
    expect(free.targets.abvPercent).toBeLessThan(30)
  })

  it('takes sugar that goes in with the plants, and what it makes if that is more than usual', () => {
    const made = plan(
      wish([{ id: 'green_walnut', massG: 800 }], {
        spirits: [spirit(1000, 95)],
        sweetenings: whiteSugar(exactly(800)),
        named: named(25),
      }),
    )
    expect(made.targets.sugarGPerL).toBeGreaterThan(190)
    expect(made.sugarG.value).toBeGreaterThanOrEqual(0)
  })
})

it('an infusion that was not measured has the strength its plan expects', () => {
  const of = wish(
    [
      { id: 'lemon_peel', massG: 84 },
      { id: 'strawberry', massG: 200 },
    ],
    { spirits: [spirit(1000, 95)] },
  )
  const { steep: expected } = plan(of)
  const amount = { amount: exactly(expected.infusionMl.value), by: 'volume', atC: 20 } as const
  const { infusion } = readInfusion(of.plants, of.spirits ?? [], amount, null)
  expect(infusion.abvPercent.value).toBeCloseTo(expected.infusionAbvPercent.value, 9)
  // The model's own error is in the one, and not yet in the other.
  expect(infusion.abvPercent.plusMinus).toBeCloseTo(expected.infusionAbvPercent.plusMinus, 2)
  expect(infusion.sugarGPerL.value).toBeGreaterThan(5)
})
