import fc from 'fast-check'
import { expect, test, vi } from 'vitest'
import {
  abvPercent,
  ethanolG,
  liquidFrom,
  massG,
  part,
  mix as pour,
  spirit,
  sugarG,
  sugarGPerL,
  water,
  waterG,
} from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { liquidOf } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { type Adjustment, adjust } from '../../../core/recipe/solve/adjust.ts'
import { runs, SEED } from '../../runs.ts'
import { portion, share, sweetness } from './kitchens.ts'

vi.setConfig({ testTimeout: runs(20_000, 600_000) })

const addedG = ({ outcome, ...added }: Adjustment, spiritPercent: number) =>
  massG(spirit({ volumeMl: added.spiritMl.value, abvPercent: spiritPercent })) + added.waterG.value + added.sugarG.value

const problem = fc.record({
  from: share(15, 40),
  fromGPerL: sweetness(250),
  to: share(15, 40),
  toGPerL: sweetness(250),
  spiritPercent: share(60, 96),
})

const solve = ({ from, fromGPerL, to, toGPerL, spiritPercent }: { readonly [name: string]: number }) =>
  adjust(portion(1000, from!, fromGPerL!), { abvPercent: to!, sugarGPerL: toGPerL! }, exactly(spiritPercent!))

const reachable = problem.filter((each) => each.toGPerL > 0 || each.fromGPerL === 0)

test('one of the three is never needed: what could be left out is', () => {
  fc.assert(
    fc.property(reachable, (each) => {
      const added = solve(each)
      const needed = [added.spiritMl, added.waterG, added.sugarG].filter(({ value }) => value > 1e-6)
      expect(needed.length).toBeLessThanOrEqual(2)
    }),
    { seed: SEED, numRuns: runs(120, 10_000) },
  )
})

test('any smaller addition that hits both targets would have to take something away', () => {
  fc.assert(
    fc.property(reachable, share(0, 0.999), (each, size) => {
      const best = addedG(solve(each), each.spiritPercent)
      fc.pre(best > 0.01)
      const from = liquidOf(valuesOf(portion(1000, each.from, each.fromGPerL)))
      // The final mass fixes what has to be in it, and so each of the three additions.
      const litre = liquidFrom({ volumeMl: 1000, abvPercent: each.to, sugarGPerL: each.toGPerL })
      const made = part(litre, (massG(from) + size * best) / massG(litre))
      const spiritLitre = spirit({ volumeMl: 1000, abvPercent: each.spiritPercent })
      const litres = (ethanolG(made) - ethanolG(from)) / ethanolG(spiritLitre)
      const waterNeededG = waterG(made) - waterG(from) - litres * waterG(spiritLitre)
      expect(Math.min(litres, waterNeededG, sugarG(made) - sugarG(from))).toBeLessThan(0)
    }),
    { seed: SEED, numRuns: runs(120, 10_000) },
  )
})

test('a grid of blends around the answer has none that is smaller and reaches both', () => {
  // 1 l of 33 % vol and 300 g/L to 30 % vol and 250 g/L with spirit of 95 % vol: water and spirit, no sugar.
  const answer = adjust(portion(1000, 33, 300), { abvPercent: 30, sugarGPerL: 250 }, exactly(95))
  const best = addedG(answer, 95)
  const from = liquidOf(valuesOf(portion(1000, 33, 300)))
  let nearest = Number.POSITIVE_INFINITY
  for (let spiritMl = 0; spiritMl < best; spiritMl += 2) {
    for (let waterG = 0; waterG < best * 0.98; waterG += 2) {
      const made = pour(from, spirit({ volumeMl: spiritMl, abvPercent: 95 }), water(waterG))
      if (massG(made) - massG(from) > best * 0.98) continue
      nearest = Math.min(nearest, Math.abs(abvPercent(made) - 30) / 30 + Math.abs(sugarGPerL(made) - 250) / 250)
    }
  }
  expect(answer.sugarG.value).toBe(0)
  expect(nearest).toBeGreaterThan(1e-3)
})

// Found by trying: the spirit at hand is weaker than the target without its sugar, and not needed at all.
test('a spirit too weak to help does no harm', () => {
  const targets = { abvPercent: 45, sugarGPerL: 100 }
  const without = adjust(portion(1000, 50, 100), targets, null)
  const withWeak = adjust(portion(1000, 50, 100), targets, exactly(40))
  expect(withWeak.spiritMl.value).toBe(0)
  expect(withWeak.waterG.value).toBeCloseTo(without.waterG.value, 6)
  expect(withWeak.sugarG.value).toBeCloseTo(without.sugarG.value, 6)
})

test.each<[what: string, from: [number, number], to: [number, number], spirit: number | null, problem: string]>([
  ['stronger without a spirit', [25, 200], [30, 200], null, 'adjust_needs_spirit'],
  ['drier at the same strength without a spirit', [30, 300], [30, 200], null, 'adjust_needs_spirit'],
  ['stronger than the spirit', [30, 200], [45, 200], 40, 'adjust_spirit_too_weak'],
  ['all its sugar out again', [30, 200], [30, 0], 95, 'adjust_keeps_sugar'],
])('refuses %s', (_, [from, fromGPerL], [to, toGPerL], spiritPercent, key) => {
  const spiritAbv = spiritPercent === null ? null : exactly(spiritPercent)
  const act = () => adjust(portion(1000, from, fromGPerL), { abvPercent: to, sugarGPerL: toGPerL }, spiritAbv)
  expect(act).toThrow(key)
})
