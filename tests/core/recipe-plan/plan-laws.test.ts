import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { unlessRefused } from '../../../core/domain-error.ts'
import { abvPercent, mix, sugar, sugarGPerL, volumeMl, water } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { plan } from '../../../core/recipe/plan/plan.ts'
import { syrupFor } from '../../../core/recipe/solve/syrup-for.ts'
import { steep } from '../../../core/recipe/steep.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import { spirit, wish } from './wishes.ts'

const options = { seed: SEED, numRuns: runs(50, 1000) }
const named = (abvPercent?: number, sugarGPerL?: number) => ({ abvPercent, sugarGPerL })
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('laws', () => {
  const id = fc.constantFrom(...catalogue.map((each) => each.id))
  const given = fc.record({
    ids: fc.uniqueArray(id, { minLength: 1, maxLength: 3 }),
    share: number(0.2, 1),
    ml: number(100, 4000),
    percent: number(40, 96),
    toAbvPercent: fc.option(number(15, 45), { nil: undefined }),
    toSugarGPerL: fc.option(number(0, 350), { nil: undefined }),
    withSugarG: fc.oneof(fc.constant(0), number(0, 500)),
  })
  type Given = typeof given extends fc.Arbitrary<infer Value> ? Value : never
  const wishOf = ({ ids, share, ml, percent, toAbvPercent, toSugarGPerL, withSugarG }: Given, more = 1) =>
    wish(
      ids.map((each) => {
        const { dose, ceiling } = catalogue.find((plant) => plant.id === each)!
        const gPerL = Math.min(dose.typicalGPerL, (ceiling?.gPerLSpirit ?? 1e9) / 8) * share
        return { id: each, massG: (gPerL * ml * more) / 1000 / ids.length }
      }),
      {
        spirits: [spirit(ml, percent)],
        sweetenings: whiteSugar(exactly(withSugarG)),
        named: named(toAbvPercent, toSugarGPerL),
        bottles: [{ count: null, volumeMl: 500 }],
      },
    )
  /** Null where the wish is refused for a reason that a maker can mend; a fault of ours is thrown. */
  const attempt = (of: ReturnType<typeof wishOf>) => {
    return unlessRefused(() => plan(of))
  }

  it('no amount is negative, nothing is lost between bottles and what is left, and the plan gives its outcome again', () => {
    let planned = 0
    fc.assert(
      fc.property(given, (of) => {
        const made = attempt(wishOf(of))
        if (made === null) return
        planned++
        const { waterG, sugarG, syrupMl, filled, outcome, spiritMl } = made
        for (const each of [waterG.value, sugarG.value, syrupMl.value, filled.leftoverMl, spiritMl.value]) {
          expect(each).toBeGreaterThanOrEqual(0)
        }
        const bottledMl = filled.bottles.reduce((sum, { count, volumeMl }) => sum + count * volumeMl, 0)
        expect((bottledMl + filled.leftoverMl) / outcome.volumeMl.value).toBeCloseTo(1, 9)
        const { infusion } = steep(made.steeping)
        const amounts = syrupFor(infusion, { by: 'strength_and_sweetness', ...made.targets })
        const again = mix(infusion, water(amounts.waterG), sugar(amounts.sugarG))
        expect(volumeMl(again) / outcome.volumeMl.value).toBeCloseTo(1, 9)
        expect(Math.abs(abvPercent(again) - outcome.abvPercent.value)).toBeLessThan(1e-6)
        expect(Math.abs(sugarGPerL(again) - outcome.sugarGPerL.value)).toBeLessThan(1e-6)
        expect(Math.abs(outcome.abvPercent.value - made.targets.abvPercent)).toBeLessThan(1e-6)
      }),
      options,
    )
    expect(planned).toBeGreaterThan(options.numRuns / 3)
  })

  it('more plant never makes more liqueur of the same strength', () => {
    fc.assert(
      fc.property(given, number(1.01, 1.5), (of, more) => {
        const [less, full] = [attempt(wishOf(of)), attempt(wishOf(of, more))]
        if (less === null || full === null || less.targets.abvPercent !== full.targets.abvPercent) return
        expect(full.outcome.volumeMl.value).toBeLessThanOrEqual(less.outcome.volumeMl.value * (1 + 1e-9))
        expect(full.steep.jarAbvPercent.value).toBeLessThanOrEqual(less.steep.jarAbvPercent.value * (1 + 1e-9))
      }),
      options,
    )
  })

  it('bottles are filled to the last millilitre, whatever the spirit and the plants', () => {
    const back = fc.record({
      ids: fc.uniqueArray(id, { minLength: 1, maxLength: 2 }),
      percent: number(50, 96),
      count: fc.integer({ min: 1, max: 20 }),
    })
    fc.assert(
      fc.property(back, ({ ids, percent, count }) => {
        const of = wish(
          ids.map((each) => ({ id: each })),
          { spiritAbvPercent: exactly(percent), bottles: [{ count, volumeMl: 500 }] },
        )
        const made = attempt(of)
        if (made === null) return
        expect(made.outcome.volumeMl.value / (500 * count)).toBeCloseTo(1, 9)
        expect(made.filled.empty).toBe(0)
      }),
      options,
    )
  })
})
