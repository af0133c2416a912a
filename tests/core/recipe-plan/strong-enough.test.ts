import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { readInfusion } from '../../../core/jar/state/read-infusion.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { plan } from '../../../core/recipe/plan/plan.ts'
import type { PlanWish } from '../../../core/recipe/plan/plan-wish.ts'
import { ofStrength, onLabel } from '../../../core/recipe/plan/weak-steep-advice.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import { made } from '../recipe-code/making.ts'
import { LEMON, usualRecipe } from '../recipe-code/recipes.ts'
import { spirit, wish } from './wishes.ts'

type Advice = NonNullable<DomainError<'steep_too_weak'>['values']['instead']>

/** What is said of a steep that is too weak; null where it is made, or refused for another reason. */
const adviceOf = (make: () => unknown): Advice | null => {
  try {
    make()
    return null
  } catch (error) {
    if (!(error instanceof DomainError) || error.code === 'internal') throw error
    if (error.problem !== 'steep_too_weak') return null
    const { instead } = (error as DomainError<'steep_too_weak'>).values
    expect(instead).not.toBeNull()
    return instead
  }
}

describe('what would do instead of a steep that is too weak', () => {
  it('is spirit that makes the same drink too, in whole per cent', () => {
    const weak = { spirits: [spirit(1000, 12)] }
    const of = (abvPercent?: number) => ({ named: { abvPercent, sugarGPerL: undefined } })
    const recipe = { ...LEMON, targets: { abvHundredthPercent: 3000, sugarTenthGPerL: 1900 } }
    const same = adviceOf(() => made(recipe, weak))!.spiritAbvPercent!
    const drink = adviceOf(() => made(recipe, weak, of(15)))!.spiritAbvPercent!
    // 30 % vol with so much sugar takes more spirit than what keeps 15 % vol in its jar.
    expect(same).toBeGreaterThan(30)
    expect(drink).toBe(20)
    expect(made(recipe, { spirits: [spirit(1000, same)] }).plan.targets.abvPercent).toBe(30)
    expect(() => made(recipe, { spirits: [spirit(1000, same - 1)] })).toThrow(DomainError)
    expect(made(recipe, { spirits: [spirit(1000, drink)] }, of(15)).plan.steep.keeping).toBe('keeps')
    expect(made(recipe, { spirits: [spirit(1000, drink - 1)] }, of(15)).plan.steep.keeping).not.toBe('keeps')
  })

  it('is less water first, where that is what weakens it', () => {
    const watered = wish([{ id: 'lemon_peel', massG: 100 }], { spirits: [spirit(1000, 95)], steepAtPercent: 15 })
    const { steepAtPercent } = adviceOf(() => plan(watered))!
    expect(plan({ ...watered, steepAtPercent }).steep.keeping).toBe('keeps')
  })

  it('is fewer plants where those do, and not where the spirit is too weak by itself', () => {
    const of = (percent: number) => wish([{ id: 'strawberry', massG: 1000 }], { spirits: [spirit(1000, percent)] })
    expect(adviceOf(() => plan(of(30)))!.fewerPlants).toBe(true)
    expect(adviceOf(() => plan(of(14)))!.fewerPlants).toBe(false)
  })

  it('is nothing where nothing alone does', () => {
    const hopeless = wish([{ id: 'strawberry', massG: 9000 }], { spirits: [spirit(1000, 15)] })
    expect(adviceOf(() => plan(hopeless))).toMatchObject({ spiritAbvPercent: null, fewerPlants: false })
  })

  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
  const orNot = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined })
  const atHand = fc.array(fc.record({ ml: number(100, 3000), percent: number(5, 50) }), { minLength: 1, maxLength: 2 })
  const spiritsOf = (each: readonly { ml: number; percent: number }[]) =>
    each.map(({ ml, percent }) => spirit(ml, percent))
  const given = fc.record({
    plants: fc.uniqueArray(fc.constantFrom(...catalogue), { minLength: 1, maxLength: 3 }),
    share: number(0.1, 1.5),
    isDosed: fc.boolean(),
    spirits: atHand,
    isToFind: fc.boolean(),
    toAbvPercent: orNot(number(10, 45)),
    toSugarGPerL: orNot(number(0, 350)),
    steepAtPercent: fc.oneof({ weight: 3, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: number(5, 25) }),
    sugarG: fc.oneof(fc.constant(0), number(0, 500)),
  })
  type Given = typeof given extends fc.Arbitrary<infer Value> ? Value : never
  const wishOf = (of: Given): PlanWish => {
    const spirits = spiritsOf(of.spirits)
    const litres = of.spirits.reduce((sum, { ml }) => sum + ml / 1000, 0)
    const massG = ({ dose, ceiling }: Given['plants'][number]) =>
      (Math.min(dose.maxGPerL, (ceiling?.gPerLSpirit ?? 1e9) / 8) * of.share * litres) / of.plants.length
    const plants = of.plants.map((plant) => ({ id: plant.id, ...(of.isDosed && { massG: massG(plant) }) }))
    return wish(plants, {
      spirits: of.isToFind ? null : spirits,
      spiritAbvPercent: exactly(of.spirits[0]!.percent),
      steepAtPercent: of.steepAtPercent ?? null,
      sweetenings: whiteSugar(exactly(of.sugarG)),
      named: { abvPercent: of.toAbvPercent, sugarGPerL: of.toSugarGPerL },
    })
  }

  it('is planned when it is followed to the letter', () => {
    const followed = { spirit: 0, steepAt: 0 }
    const numRuns = runs(150, 3000)
    fc.assert(
      fc.property(given, (of) => {
        const wished = wishOf(of)
        const advice = adviceOf(() => plan(wished))
        if (advice === null) return
        expect(advice.isSpiritGiven).toBe(wished.spirits !== null)
        if (advice.spiritAbvPercent !== null) {
          followed.spirit++
          const spiritAbvPercent = onLabel(advice.spiritAbvPercent)
          const spirits = wished.spirits && ofStrength(wished.spirits, spiritAbvPercent)
          expect(() => plan({ ...wished, spirits, spiritAbvPercent })).not.toThrow()
        }
        if (advice.steepAtPercent !== null) {
          followed.steepAt++
          expect(() => plan({ ...wished, steepAtPercent: advice.steepAtPercent })).not.toThrow()
        }
        if (!advice.fewerPlants) return
        const less = (share: number) =>
          wished.plants.map((plant) => ({ ...plant, massG: plant.massG && exactly(plant.massG.value * share) }))
        const shares = [1 / 2, 1 / 4, 1 / 8, 1 / 16, 1 / 64]
        expect(shares.some((share) => adviceOf(() => plan({ ...wished, plants: less(share) })) === null)).toBe(true)
      }),
      { seed: SEED, numRuns },
    )
    expect(followed.spirit).toBeGreaterThan(numRuns / 8)
    expect(followed.steepAt).toBeGreaterThan(0)
  })

  it('is planned when it is followed, whatever batch is made again', () => {
    let followed = 0
    const numRuns = runs(40, 3000)
    const friends = fc.record({
      recipe: usualRecipe,
      spirits: atHand,
      toAbvPercent: orNot(number(10, 30)),
      isToFind: fc.boolean(),
    })
    fc.assert(
      fc.property(friends, ({ recipe, spirits, toAbvPercent, isToFind }) => {
        const asked = { named: { abvPercent: toAbvPercent, sugarGPerL: undefined } }
        const make = (abvPercent: number | null) => {
          const each = spirits.map(({ ml, percent }) => spirit(ml, abvPercent ?? percent))
          if (!isToFind) return made(recipe, { spirits: each }, asked)
          return made(recipe, { spiritAbvPercent: onLabel(abvPercent ?? spirits[0]!.percent) }, asked)
        }
        const advice = adviceOf(() => make(null))
        if (advice?.spiritAbvPercent == null) return
        followed++
        expect(() => make(advice.spiritAbvPercent)).not.toThrow()
      }),
      { seed: SEED, numRuns },
    )
    expect(followed).toBeGreaterThan(numRuns / 8)
  })

  it('is not asked of an infusion that is there already', () => {
    const berries = { botanical: catalogue.find(({ id }) => id === 'strawberry')!, massG: exactly(1000), count: null }
    const { infusion } = readInfusion(
      [berries],
      [spirit(1000, 10)],
      { amount: exactly(1200), by: 'volume', atC: 20 },
      null,
    )
    expect(infusion.abvPercent.value).toBeLessThan(10)
  })
})
