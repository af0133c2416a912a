import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { inForm } from '../../../core/botanical/find/in-form.ts'
import { unlessRefused } from '../../../core/domain-error.ts'
import { startedFrom } from '../../../core/jar/entry/start-from-plan.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { addDays, dayFromIso, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { cutCount, scale, withDays } from '../../../core/recipe/batch.ts'
import { decodeBatch, encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { batchOf, rounded } from '../../../core/recipe/code/recipe-batch.ts'
import { remade, wishOf } from '../../../core/recipe/plan/batch-wish.ts'
import { plan } from '../../../core/recipe/plan/plan.ts'
import type { PlannedPlant, PlanWish } from '../../../core/recipe/plan/plan-wish.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import { usualRecipe } from '../recipe-code/recipes.ts'
import { START, spirit, wish } from '../recipe-plan/wishes.ts'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const orNone = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined })

const near = (one: unknown, other: unknown): void => {
  if (typeof one === 'number' && typeof other === 'number') {
    expect(Math.abs(one - other)).toBeLessThanOrEqual(1e-12 * Math.abs(other))
  } else if (typeof one === 'object' && one !== null && typeof other === 'object' && other !== null) {
    expect(Object.keys(one)).toEqual(Object.keys(other))
    for (const [key, value] of Object.entries(one)) near(value, (other as Record<string, unknown>)[key])
  } else expect(one).toBe(other)
}

const plants: fc.Arbitrary<readonly PlannedPlant[]> = fc
  .uniqueArray(fc.constantFrom(...catalogue), { minLength: 1, maxLength: 3, selector: ({ id }) => id })
  .chain((some) =>
    fc.tuple(
      ...some.map((usual) =>
        fc.record({
          botanical: fc.boolean().map((isDried) => (isDried && inForm(usual, 'dried')) || usual),
          massG: fc.oneof(
            fc.constant(null),
            number(0.2, 1).map((share) => exactly((share * usual.dose.typicalGPerL) / some.length)),
          ),
          count: fc.constant(null),
          words: fc.constantFrom(null, { noun: 'own words', isFormSaid: true, unit: null }),
        }),
      ),
    ),
  )

/** What somebody may plan: some of it is refused. */
const wishes: fc.Arbitrary<PlanWish> = fc
  .record({
    plants,
    spirits: fc.oneof(
      fc.constant(null),
      number(40, 96).map((percent) => [spirit(1000, percent)]),
    ),
    named: fc.record({ abvPercent: orNone(number(22, 32)), sugarGPerL: orNone(number(50, 250)) }),
    steepAtPercent: fc.constantFrom(null, null, 60),
    sweetenings: fc.constantFrom([], whiteSugar(exactly(20))),
    readyBy: fc.constantFrom(null, null, addDays(START, 120)),
    areBottlesNamed: fc.boolean(),
  })
  .map(({ plants: of, ...rest }) => ({ ...wish([], rest), plants: of }))

const startOf = (wished: PlanWish) => {
  return unlessRefused(() => startedFrom(plan(wished), wished, 'shelf'))
}

describe('a batch', () => {
  it('scaled and scaled back is the same', () => {
    fc.assert(
      fc.property(usualRecipe, number(0.05, 20), (recipe, factor) => {
        const batch = batchOf(recipe)
        near(scale(scale(batch, factor), 1 / factor), batch)
      }),
      { seed: SEED, numRuns: runs(80, 5000) },
    )
  })

  it('is what its code tells, however often it is written', () => {
    fc.assert(
      fc.property(usualRecipe, (recipe) => {
        const code = encodeBatch(recipe)
        const batch = batchOf(decodeBatch(code))
        expect(rounded(batch)).toEqual(recipe)
        expect(encodeBatch(rounded(batch))).toBe(code)
      }),
      { seed: SEED, numRuns: runs(80, 5000) },
    )
  })

  it('of a start plans the start once more', () => {
    let planned = 0
    fc.assert(
      fc.property(wishes, (wished) => {
        const start = startOf(wished)
        if (start === null) return
        planned++
        const { readyBy } = start.named
        const again = wishOf(start, { start: START, readyBy: readyBy === null ? null : dayFromIso(readyBy) })
        expect(startOf(again)).toEqual(start)
      }),
      { seed: SEED, numRuns: runs(30, 2000) },
    )
    expect(planned).toBeGreaterThan(20)
  })

  it('measured out once more is as well known as tools make it, but for what was counted', () => {
    const wished = wish([{ id: 'lemon_peel', massG: { value: 100, plusMinus: 40 } }], { spirits: [spirit(1000, 95)] })
    const start = startedFrom(plan(wished), wished, 'lemon')
    const words = { noun: 'lemons', isFormSaid: false, unit: 'each' }
    const counted = { ...start, plants: start.plants.map((plant) => ({ ...plant, count: 9.4, words })) }
    // 9.4 twice is 18.8, by 1 % near to 19; the scale of a kitchen tells grams within 1 g or 0.5 %.
    expect(remade(counted, 2).plants).toMatchObject([{ massG: { value: 200, plusMinus: 80 }, count: 19 }])
    expect(remade(start, 2).plants).toMatchObject([{ massG: { value: 200, plusMinus: 1 } }])
    expect(remade(start, 2).spirits).toMatchObject([{ amount: { value: 2000, plusMinus: 40 } }])
  })

  it('has all its days moved at once', () => {
    const wished = wish([{ id: 'lemon_peel' }], { spirits: [spirit(1000, 95)], readyBy: addDays(START, 120) })
    const start = startedFrom(plan(wished), wished, 'lemon')
    const moved = withDays(start, (day) => isoDay(addDays(dayFromIso(day), 3)))
    expect(withDays(moved, (day) => isoDay(addDays(dayFromIso(day), -3)))).toEqual(start)
    expect(moved.days.strainBy! > start.days.strainBy!).toBe(true)
    expect(moved.named.readyBy! > start.named.readyBy!).toBe(true)
  })

  it.each([
    [0.19, null],
    [0.2, 0.2],
    [0.97, 0.97],
    [0.985, 1],
    [7.48, 7.5],
    [7.3, 7.3],
    [12.26, 12.5],
    [12.24, 12],
  ])('has a count of %d cut to %j', (count, cut) => {
    expect(cutCount(count)).toBe(cut)
  })
})
