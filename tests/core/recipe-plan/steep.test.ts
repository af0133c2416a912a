import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { botanicalById, catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { abvPercent, ethanolG, massG, volumeMl } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { plantOf } from '../../../core/recipe/plan/plant-of.ts'
import { liquidOf } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { inputsOf, jarMlFor, type Plant, type Steeping, steep, steepLiquids } from '../../../core/recipe/steep.ts'
import { sugarsInG, whiteSugar } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import { refusal, refusedValues } from '../quantity/refusal.ts'
import { spirit } from './wishes.ts'

const steepOf = (plants: readonly Plant[], ml: number, percent: number, sugarG = 0): Steeping => ({
  spirits: [spirit(ml, percent)],
  waterG: exactly(0),
  sweetenings: whiteSugar(exactly(sugarG)),
  plants,
})

const of = (id: string, massG: number): Plant => plantOf(botanicalById(id), exactly(massG))

describe('published and worked figures', () => {
  // A worked figure derived from OIML R 22 and USDA NDB 09156: upper bound, water only.
  test('150 g of lemon peel in 1000 ml of 96 % vol: up to 1107.1 ml at 86.7 % vol', () => {
    const peel = {
      ...of('lemon_peel', 150),
      exchangeShare: exactly(1),
      sugarShare: exactly(0),
      extractShare: exactly(0),
    }
    const made = steep(steepOf([peel], 1000, 96))
    // The source counts the 122.4 g of water as 122.4 ml; they are 122.6.
    expect(Math.abs(made.jarLiquidMl.value - 1107.1)).toBeLessThan(0.25)
    expect(made.jarAbvPercent.value).toBeCloseTo(86.7, 1)
  })

  // Water by USDA SR28, g/100 g.
  test.each([
    ['lemon_peel', 0.816],
    ['orange_peel', 0.725],
    ['basil', 0.9206],
    ['ginger', 0.7889],
    ['strawberry', 0.9095],
  ])('%s is %f water', (id, share) => {
    expect(of(id, 1).waterShare.value).toBe(share)
  })

  // 1 kg of raspberries, all of whose water joins: 17.6 % vol in 700 ml of 40 % and undecided, 14.4 % vol in 500 ml and
  // fermenting (keeping.json, "steeping_jar", derived). Here the water that surely joins is less, and the rest is the ±.
  it('judges the jar with the water of its plants, at the low end of what is known', () => {
    const [raspberries, strawberries] = [of('raspberry', 1000), of('strawberry', 1000)]
    const undecided = steep(steepOf([raspberries], 700, 40))
    expect(undecided.keeping).toBe('undecided')
    expect(Math.abs(undecided.jarAbvPercent.value - undecided.jarAbvPercent.plusMinus - 17.6)).toBeLessThan(0.8)
    expect(refusal(() => steep(steepOf([raspberries], 500, 40)))).toBe('unreachable steep_too_weak')
    const { lowAbvPercent } = refusedValues(() => steep(steepOf([raspberries], 500, 40))) as { lowAbvPercent: number }
    expect(Math.abs(lowAbvPercent - 14.4)).toBeLessThan(0.8)
    expect(steep(steepOf([strawberries], 1000, 40)).keeping).toBe('keeps')
    expect(steep(steepOf([strawberries], 1000, 35)).keeping).toBe('undecided')
    expect(refusal(() => steep(steepOf([strawberries], 1000, 30)))).toBe('unreachable steep_too_weak')
  })

  it('refuses plants that would drink the spirit up, with the spirit that covers them', () => {
    const call = () => steep(steepOf([of('chamomile', 700)], 1000, 60))
    expect(refusal(call)).toBe('unreachable plants_drink_all')
    const { enoughMl } = refusedValues(call) as { enoughMl: number }
    expect(steep(steepOf([of('chamomile', 700)], enoughMl, 60)).infusionMl.value).toBeGreaterThan(0)
  })

  it('takes the next usual jar, a larger one for leaves', () => {
    const plant = (massG: number, bulky: boolean) => ({ massG: exactly(massG), bulky })
    expect(jarMlFor(700, [plant(84, false)])).toBe(1000)
    expect(jarMlFor(500, [plant(80, true)])).toBe(1000)
    expect(jarMlFor(100, [])).toBe(250)
    expect(jarMlFor(60_000, [])).toBe(70_000)
  })
})

const anyPlant = fc
  .record({ index: fc.nat(catalogue.length - 1), share: fc.double({ min: 0.1, max: 1, noNaN: true }) })
  .map(({ index, share }) => {
    const botanical = catalogue[index]!
    return { botanical, gPerL: botanical.dose.maxGPerL * share }
  })
const anySteep = fc.record({
  plants: fc.array(anyPlant, { minLength: 1, maxLength: 3 }),
  ml: fc.double({ min: 50, max: 5000, noNaN: true }),
  percent: fc.double({ min: 37.5, max: 96, noNaN: true }),
  sugarGPerL: fc.double({ min: 0, max: 400, noNaN: true }),
})

const liquids = (steeping: Steeping) => steepLiquids(valuesOf(inputsOf(steeping)))

describe('laws', () => {
  const options = { seed: SEED, numRuns: runs(200, 2000) }
  const build = (
    { plants, ml, percent, sugarGPerL }: typeof anySteep extends fc.Arbitrary<infer T> ? T : never,
    more = 1,
  ) =>
    steepOf(
      plants.map(({ botanical, gPerL }, index) =>
        plantOf(botanical, exactly((gPerL * ml * (index === 0 ? more : 1)) / 1000 / plants.length)),
      ),
      ml,
      percent,
      (sugarGPerL * ml) / 1000,
    )

  it('closes its mass balance, and nothing is negative', () => {
    fc.assert(
      fc.property(anySteep, (given) => {
        const steeping = build(given)
        const made = liquids(steeping)
        const ofPlants = made.plantWaterG + made.plantSugarG + made.plantExtractG
        const brought = ofPlants + sugarsInG(steeping.sweetenings)
        const poured = massG(liquidOf(valuesOf(steeping.spirits[0]!)))
        expect(massG(made.jar) / (poured + brought)).toBeCloseTo(1, 12)
        const density = massG(made.jar) / made.jarLiquidMl
        const drained = massG(made.infusion) + density * (made.filterMl + Math.min(made.keptBackMl, made.jarLiquidMl))
        expect(drained / massG(made.jar)).toBeCloseTo(1, 9)
        for (const each of [made.plantWaterG, made.plantSugarG, made.plantExtractG, made.keptBackMl, made.filterMl]) {
          expect(each).toBeGreaterThanOrEqual(0)
        }
        expect(volumeMl(made.infusion)).toBeGreaterThanOrEqual(0)
      }),
      options,
    )
  })

  it('more plant is never stronger, and never leaves more alcohol to make liqueur of', () => {
    fc.assert(
      fc.property(anySteep, fc.double({ min: 1.01, max: 3, noNaN: true }), (given, more) => {
        const [less, full] = [liquids(build(given)), liquids(build(given, more))]
        expect(abvPercent(full.jar)).toBeLessThanOrEqual(abvPercent(less.jar) * (1 + 1e-12))
        expect(ethanolG(full.infusion)).toBeLessThanOrEqual(ethanolG(less.infusion) * (1 + 1e-12))
      }),
      options,
    )
  })
})
