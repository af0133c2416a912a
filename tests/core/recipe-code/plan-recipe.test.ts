import { describe, expect, it } from 'vitest'
import { DomainError } from '../../../core/domain-error.ts'
import { ethanolG, volumeMl } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { refusal } from '../quantity/refusal.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { bottles, expectConserved, made } from './making.ts'
import { LEMON } from './recipes.ts'

describe('a friend makes 10 lemons in a litre of 95 % vol, 30 % vol and 250 g/L', () => {
  const own = made(LEMON)

  it('as it was', () => {
    expect(own).toMatchObject({ factor: 1, limit: null, spiritShare: 1 })
    expect(own.plan.plants[0]).toMatchObject({ massG: { value: 105 }, count: 10 })
    expect(own.plan.spiritMl.value).toBeCloseTo(1000, 9)
    expect(own.plan.targets).toEqual({ abvPercent: 30, sugarGPerL: 250 })
    expectConserved(own)
  })

  // % vol counts the volume of alcohol: 700 ml at 40 % vol hold 280 ml of it, the recipe 950, so that 280/950 of 105 g are due.
  it.each([
    [700, 40, 280 / 950],
    [700, 70, 490 / 950],
    [2000, 40, 800 / 950],
  ])('with %i ml of %i %% vol', (ml, percent, factor) => {
    const friend = made(LEMON, { spirits: [spirit(ml, percent)] })
    expect(friend.factor).toBeCloseTo(factor, 9)
    expect(friend.limit).toEqual({ by: 'spirit' })
    expect(friend.plan.plants[0]!.massG.value).toBeCloseTo(105 * factor, 6)
    expect(friend.plan.outcome.abvPercent.value).toBeCloseTo(30, 9)
    expect(friend.plan.outcome.sugarGPerL.value).toBeCloseTo(250, 6)
    // As much alcohol for each gram of peel as in the recipe, before anything is strained.
    expect(ethanolG(friend.plan.steep.jar) / friend.plan.plants[0]!.massG.value).toBeCloseTo(
      ethanolG(own.plan.steep.jar) / 105,
      9,
    )
    // And as much in the drink as strains out, which 30 % vol spreads over so many millilitres.
    const { infusion } = friend.plan.steep
    const litresG = ethanolG(friend.plan.outcome.liquid) / volumeMl(friend.plan.outcome.liquid)
    expect(litresG).toBeCloseTo(0.3 * 0.78924, 4)
    expect(friend.plan.outcome.volumeMl.value).toBeCloseTo(ethanolG(infusion) / litresG, 6)
    expect(friend.wish.steepAtPercent).toBeNull()
    expectConserved(friend)
  })

  it('weaker spirit takes less water, for the same drink', () => {
    const [strong, weak] = [own, made(LEMON, { spirits: [spirit(2375, 40)] })]
    expect(weak.factor).toBeCloseTo(1, 9)
    expect(weak.plan.waterG.value).toBeLessThan(strong.plan.waterG.value / 3)
    expect(weak.plan.sugarG.value).toBeCloseTo(strong.plan.sugarG.value, -2)
  })

  it('with half the lemons, and spirit for all of them', () => {
    const friend = made(LEMON, { spirits: [spirit(1000, 95)], plants: [{ index: 0, massG: 52.5 }] })
    expect(friend).toMatchObject({ factor: 0.5, limit: { by: 'plant', index: 0 }, spiritShare: 0.5 })
    expect(friend.plan.plants[0]).toMatchObject({ massG: { value: 52.5 }, count: 5 })
    expect(friend.plan.spiritMl.value).toBeCloseTo(500, 9)
    expect(friend.plan.outcome.volumeMl.value).toBeCloseTo(own.plan.outcome.volumeMl.value / 2, 6)
    expectConserved(friend)
  })

  it('with half the lemons, and as much spirit as they take', () => {
    const friend = made(LEMON, { plants: [{ index: 0, massG: 52.5 }] })
    expect(friend).toMatchObject({ factor: 0.5, spiritShare: 1 })
    expect(friend.plan.spiritMl.value).toBeCloseTo(500, 9)
  })

  it('with lemons to spare', () => {
    const friend = made(LEMON, { spirits: [spirit(500, 95)], plants: [{ index: 0, massG: 500 }] })
    expect(friend).toMatchObject({ factor: 0.5, limit: { by: 'spirit' }, spiritShare: 1 })
  })

  it('for so many bottles, whatever spirit there is', () => {
    const all = made(LEMON, {}, { bottles: bottles(8) })
    expect(all.plan.filled).toEqual({ bottles: [{ count: 8, volumeMl: 500 }], leftoverMl: 0, empty: 0 })
    expect(all.factor).toBeCloseTo(4000 / own.plan.outcome.volumeMl.value, 9)
    const few = made(LEMON, { spirits: [spirit(1000, 95)] }, { bottles: bottles(2) })
    expect(few.limit).toEqual({ by: 'bottles' })
    expect(few.plan.filled).toMatchObject({ bottles: [{ count: 2 }], leftoverMl: 0, empty: 0 })
    expect(few.spiritShare).toBeCloseTo(few.factor, 9)
    const many = made(LEMON, { spirits: [spirit(1000, 95)] }, { bottles: bottles(20) })
    expect(many).toMatchObject({ factor: 1, limit: { by: 'spirit' }, spiritShare: 1 })
  })

  it('with spirit to be got of another strength', () => {
    const friend = made(LEMON, { spiritAbvPercent: exactly(40) })
    expect(friend.plan.spiritMl.value).toBeCloseTo(2375, 6)
    expect(friend.factor).toBe(1)
  })

  it('steeped and rested as long', () => {
    const { strainFrom, strainBy, ready } = own.plan.schedule!
    expect([strainFrom, strainBy]).toEqual([
      { year: 2026, month: 12, day: 15 },
      { year: 2026, month: 12, day: 15 },
    ])
    expect(ready).toEqual({ year: 2027, month: 1, day: 15 })
    expect(own.usual).toEqual({ fromDays: 14, byDays: 30 })
  })
})

describe('spirit that makes another drink', () => {
  const strong = { ...LEMON, targets: { abvHundredthPercent: 3800, sugarTenthGPerL: 2500 } }

  it('is refused with what it does make, which then is taken', () => {
    const spirits = [spirit(1000, 40)]
    let problem: DomainError | null = null
    try {
      made(strong, { spirits })
    } catch (error) {
      if (error instanceof DomainError) problem = error
    }
    expect(problem).toMatchObject({
      problem: 'spirit_too_weak',
      values: { spiritAbvPercent: expect.closeTo(40, 9), toAbvPercent: 38, toSugarGPerL: 250 },
    })
    const { strongestAbvPercent } = (problem as unknown as DomainError<'spirit_too_weak'>).values
    const friend = made(strong, { spirits }, { named: { abvPercent: strongestAbvPercent!, sugarGPerL: undefined } })
    expect(friend.plan.outcome.sugarGPerL.value).toBeCloseTo(250, 6)
  })

  it('is refused where it would spoil', () => {
    expect(refusal(() => made(LEMON, { spirits: [spirit(1000, 14)] }))).toBe('unreachable steep_too_weak')
  })

  it('is brought down to that in which the batch steeped', () => {
    const vodka = { ...LEMON, spirits: [{ volumeTenthMl: 10_000, abvHundredthPercent: 4000 }] }
    const own = made(vodka)
    const friend = made(vodka, { spirits: [spirit(421, 95)] })
    expect(friend.wish.steepAtPercent).toBeCloseTo(40, 6)
    expect(friend.plan.steep.jarAbvPercent.value).toBeCloseTo(own.plan.steep.jarAbvPercent.value, 6)
    const asWished = made(vodka, { spirits: [spirit(421, 95)] }, { steepAtPercent: 60 })
    expect(asWished.wish.steepAtPercent).toBe(60)
  })

  it('keeps water that went in first', () => {
    const watered = { ...LEMON, waterTenthG: 3000 }
    const own = made(watered)
    expect(own.plan.steeping.waterG.value).toBeCloseTo(300, 6)
    const friend = made(watered, { spirits: [spirit(500, 80)] })
    expect(friend.wish.steepAtPercent).toBeCloseTo(own.wish.steepAtPercent!, 9)
    expect(friend.plan.steeping.waterG.value).toBeGreaterThan(0)
  })
})
