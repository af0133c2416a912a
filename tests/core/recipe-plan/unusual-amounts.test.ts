import { describe, expect, it } from 'vitest'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import { amountBesideUsual, isFarOff, isUnusualSpirit } from '../../../core/recipe/plan/unusual-amounts.ts'

type Batch = Parameters<typeof isFarOff>[1]

const lemon = botanicalById('lemon_peel')
const usual = { ...lemon, dose: { ...lemon.dose, minGPerL: 60, typicalGPerL: 80, maxGPerL: 100 } }
const plant = (massG: number, capped = false): Plan['plants'][number] => ({
  botanical: usual,
  massG: exactly(massG),
  count: null,
  capped,
})

/** A litre of spirit with one plant, and others. */
const batch = (others = 0, warned: readonly string[] = []) =>
  ({
    plants: [plant(0), ...Array.from({ length: others }, () => plant(1))],
    unknown: [],
    ceilings: { warned: warned.map((id) => ({ id })) },
    steep: { pouredMl: 1000 },
  }) as unknown as Batch

// Common practice, no source: 60 to 100 g in a litre are usual of this plant.
describe('an amount of a plant', () => {
  it.each([
    [300, false],
    [300.1, true],
    [20, false],
    [19.9, true],
    [80, false],
  ])('of %s g in a litre is far off: %s', (massG, isFar) => {
    expect(isFarOff(plant(massG), batch())).toBe(isFar)
  })

  it.each([
    [105, 'usual'],
    [105.1, 'more'],
    [300, 'more'],
    [300.1, 'usual'],
    [57, 'usual'],
    [56.9, 'less'],
    [20, 'less'],
    [19.9, 'usual'],
  ] as const)('of %s g in a litre is beside what is usual: %s', (massG, beside) => {
    expect(amountBesideUsual(plant(massG), batch())).toBe(beside)
  })

  it('may be a pinch among several, or little by its ceiling, but never far too much unsaid', () => {
    expect(isFarOff(plant(10), batch(1))).toBe(false)
    expect(isFarOff(plant(10, true), batch())).toBe(false)
    expect(amountBesideUsual(plant(50), batch(1))).toBe('usual')
    expect(amountBesideUsual(plant(50, true), batch())).toBe('usual')
    expect(isFarOff(plant(310), batch(1))).toBe(true)
  })

  it('is not said twice where it is warned of', () => {
    expect(isFarOff(plant(310), batch(0, ['lemon_peel']))).toBe(false)
    expect(amountBesideUsual(plant(200), batch(0, ['lemon_peel']))).toBe('usual')
    expect(isFarOff(plant(310), batch(0, ['ginger']))).toBe(true)
  })
})

it.each([
  [39, false],
  [38.9, true],
  [97, false],
  [97.1, true],
])('finds a spirit of %s %% vol unusual for a plant of 40 to 96: %s', (percent, isUnusual) => {
  expect(isUnusualSpirit(percent, { min: 40, max: 96 } as Parameters<typeof isUnusualSpirit>[1])).toBe(isUnusual)
})
