import { describe, expect, it } from 'vitest'
import { botanicalById, catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { liquidFrom } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { cutCount } from '../../../core/recipe/batch.ts'
import { expectDistilledPercent } from '../../../core/recipe/distilled.ts'
import { parseBottles } from '../../../core/recipe/plan/parse-bottles.ts'
import { plantOf } from '../../../core/recipe/plan/plant-of.ts'
import { spiritForBottles } from '../../../core/recipe/plan/spirit-for-bottles.ts'
import { NOTED_SUGAR_G } from '../../../core/recipe/plan/unusual-amounts.ts'
import { orAdvised } from '../../../core/recipe/plan/weak-steep-advice.ts'
import { massOfCounted, weighPieces } from '../../../core/recipe/plan/weigh-pieces.ts'
import { withoutTrace } from '../../../core/recipe/solve/without-trace.ts'
import { jarMlFor, type Plant, steep } from '../../../core/recipe/steep.ts'
import { refusal, refusedValues } from '../quantity/refusal.ts'
import { spirit } from './wishes.ts'

// The azeotrope of ethanol and water, 95.6 % by mass (from memory).
it('nothing above 97.2 % vol was distilled', () => {
  expect(() => expectDistilledPercent(97.2)).not.toThrow()
  expect(refusal(() => expectDistilledPercent(97.21))).toBe('refused spirit_too_strong')
})

it('up to ten thousand bottles are read', () => {
  expect(parseBottles('10000 x 500 ml')).toMatchObject([{ count: 10_000 }])
  expect(refusal(() => parseBottles('10001 x 500 ml'))).toBe('bad_value bottles_not_read')
})

// Common practice, no source: within 2 % of a half nobody cuts a fruit anew.
it.each([
  [4.905, 5],
  [4.9, 4.9],
  [0.2, 0.2],
  [0.199, null],
])('%s fruit are cut as %s', (count, cut) => {
  expect(cutCount(count)).toBe(cut)
})

// Common practice, no source.
it('a plant’s own sugar is worth a word from 5 g', () => {
  expect(NOTED_SUGAR_G).toBe(5)
})

describe('plants in a jar', () => {
  const dry = (massG: number): Plant => ({
    massG: exactly(massG),
    waterShare: exactly(0),
    sugarShare: exactly(0),
    extractShare: exactly(0),
    exchangeShare: exactly(1),
    keptMlPerG: exactly(1),
    bulky: false,
  })
  const litreOn = (massG: number) =>
    steep({ spirits: [spirit(1000, 60)], waterG: exactly(0), sweetenings: [], plants: [dry(massG)] })

  // Estimated: beyond seven tenths the plants may hold all of it; half of that is asked for.
  it('drink it up where they keep more than seven tenths', () => {
    expect(() => litreOn(699)).not.toThrow()
    expect(refusal(() => litreOn(701))).toBe('unreachable plants_drink_all')
    expect((refusedValues(() => litreOn(701)) as { enoughMl: number }).enoughMl).toBeCloseTo(701 / 0.35, 6)
  })

  // Common practice, no source: a jar is filled to nine tenths, a hundredth settles; a gram takes a millilitre, of leaves three.
  it.each([
    [909, 0, false, 1000],
    [910, 0, false, 1500],
    [809, 100, false, 1000],
    [810, 100, false, 1500],
    [609, 100, true, 1000],
    [610, 100, true, 1500],
  ])('%s ml on %s g (leaves: %s) take a jar of %s ml', (liquidMl, massG, bulky, jarMl) => {
    expect(jarMlFor(liquidMl, [{ massG: exactly(massG), bulky }])).toBe(jarMl)
  })

  // Estimated (DEVELOPERS.md, “Uncertainty”): what drained plants keep is known as far as its range spans.
  it('keep what they keep to within their range', () => {
    for (const botanical of catalogue) {
      const { value, plusMinus } = plantOf(botanical, exactly(100)).keptMlPerG
      expect(value - plusMinus, botanical.id).toBeCloseTo(botanical.retainedMlPerG.min, 9)
      expect(value + plusMinus, botanical.id).toBeCloseTo(botanical.retainedMlPerG.max, 9)
    }
  })

  it('are water to within what is known of it: its range, or the less the less its source is trusted', () => {
    const water = (id: string) => plantOf(botanicalById(id), exactly(1)).waterShare
    expect(water('basil')).toEqual({ value: 0.9206, plusMinus: 0.02 })
    expect(water('jasmine')).toEqual({ value: 0.8, plusMinus: 0.05 })
    expect(water('coffee_whole').plusMinus).toBeCloseTo(0.02, 12)
    for (const botanical of catalogue) {
      const { value, plusMinus } = plantOf(botanical, exactly(1)).waterShare
      expect(value - plusMinus, botanical.id).toBeGreaterThanOrEqual(0)
      expect(value + plusMinus, botanical.id).toBeLessThanOrEqual(1)
    }
  })

  it.each(['basil', 'spearmint', 'dill', 'vine_leaf'])('of thin leaves (%s) give nearly all of their water', (id) => {
    const { value, plusMinus } = plantOf(botanicalById(id), exactly(1)).exchangeShare
    expect(value - plusMinus).toBeCloseTo(0.95, 12)
    expect(value + plusMinus).toBe(1)
  })
})

// A pinch of sugar and a sip of water that nobody tastes (chosen for a kitchen, no source).
it.each([
  ['less than 5 g of sugar', { sugarG: 4.9, waterMl: 300, volumeMl: 1000, sugarGPerL: 5 }, [0, 300]],
  ['just 5 g of sugar', { sugarG: 5, waterMl: 300, volumeMl: 1000, sugarGPerL: 5 }, [5, 300]],
  ['less than 2 % of all the sugar', { sugarG: 5, waterMl: 300, volumeMl: 1000, sugarGPerL: 251 }, [0, 300]],
  ['less than 10 ml of water', { sugarG: 50, waterMl: 9.9, volumeMl: 100, sugarGPerL: 250 }, [50, 0]],
  ['just 10 ml of water', { sugarG: 50, waterMl: 10, volumeMl: 100, sugarGPerL: 250 }, [50, 10]],
  ['less than 2 % of all the liquid', { sugarG: 50, waterMl: 19, volumeMl: 1000, sugarGPerL: 250 }, [50, 0]],
])('%s is not worth adding', (_, { sugarG, waterMl, volumeMl, sugarGPerL }, told) => {
  const added = withoutTrace({
    sugarG: exactly(sugarG),
    waterG: exactly(waterMl),
    waterMl: exactly(waterMl),
    syrupG: exactly(sugarG + waterMl),
    syrupMl: exactly(sugarG * 0.6 + waterMl),
    dissolvesG: null,
    outcome: { volumeMl: exactly(volumeMl), sugarGPerL: exactly(sugarGPerL) },
  })
  expect([added.sugarG.value, added.waterMl.value]).toEqual(told)
  if (told[0] === 0) expect(added.syrupG.value).toBe(told[1])
})

describe('counted plants', () => {
  // Estimated: fruit and sticks vary by a fifth at least.
  it('are known to a fifth at best', () => {
    const shares = catalogue.flatMap((botanical) =>
      botanical.pieces.map(({ piece: kind }) => {
        const { value, plusMinus } = weighPieces(botanical, { count: 3, piece: null, kind }, '')
        return plusMinus / value
      }),
    )
    expect(Math.min(...shares)).toBeCloseTo(0.2, 9)
  })

  // A count is written in two digits: a twentieth, or of few a twentieth of one.
  it.each([
    [10, 10.49, true],
    [10, 10.51, false],
    [10, 9.51, true],
    [10, 9.49, false],
    [0.5, 0.549, true],
    [0.5, 0.551, false],
  ])('%s that weigh as much as %s were counted: %s', (count, asMany, isCounted) => {
    const plant = catalogue.find(({ zestGPerFruit, pieces }) => zestGPerFruit !== null && pieces.length === 0)!
    const each = weighPieces(plant, { count: 1, piece: null, kind: null }, '').value
    expect(massOfCounted(plant, count, asMany * each) !== null).toBe(isCounted)
  })
})

describe('spirit that is looked for', () => {
  // A cubic metre is the most that can be typed.
  it('is no more than a cubic metre', () => {
    const spiritFor = (wantedMl: number) =>
      spiritForBottles({
        infusionOf: (volumeMl) => liquidFrom({ volumeMl, abvPercent: 15.1, sugarGPerL: 0 }),
        targetsOf: () => ({ abvPercent: 30, sugarGPerL: 0 }),
        wantedMl,
      })
    expect(spiritFor(500_000)).toBeCloseTo((500_000 * 30) / 15.1, 0)
    expect(refusal(() => spiritFor(500_001))).toBe('unreachable spirit_out_of_range')
  })

  // Rectified spirit is sold at 96 % vol at most (common practice, no source).
  it.each([
    [40, 40],
    [96, 96],
    [96.5, null],
  ])('instead of one too weak is one of %s %% vol: %s', (leastPercent, told) => {
    const weak = (): never => {
      throw new DomainError('unreachable', 'steep_too_weak', {
        abvPercent: 10,
        lowAbvPercent: null,
        sugarGPerL: 0,
        instead: null,
      })
    }
    const values = refusedValues(() =>
      orAdvised(weak, {
        spirit: ({ value }) => ({ steep: { keeping: value >= leastPercent ? 'keeps' : 'ferments' } }),
        steepAt: null,
        plants: null,
        sugar: null,
        isSpiritGiven: true,
      }),
    )
    expect(values).toMatchObject({ instead: { spiritAbvPercent: told } })
  })
})
