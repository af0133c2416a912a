import { describe, expect, it } from 'vitest'
import { liquidFrom } from '../../../core/liquid/liquid.ts'
import { sugarOfBoiledGPerL } from '../../../core/liquid/measure/gauge.ts'
import { densityFromStemKgPerM3 } from '../../../core/liquid/measure/stem.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { drinksIn } from '../../../core/recipe/drinks-in.ts'
import { jarOf } from '../../../core/recipe/plan/jar-of.ts'
import { gauged, type StemRead } from '../../../core/recipe/solve/gauged.ts'
import { syrupFor } from '../../../core/recipe/solve/syrup-for.ts'
import { wishOf } from '../../../core/recipe/solve/syrup-wish.ts'
import { refusedValues } from '../quantity/refusal.ts'
import { spirit, wish } from '../recipe-plan/wishes.ts'

describe('the ± of a liqueur that was measured', () => {
  const stem = (gravity: number, atC: number | null = 20): StemRead => ({ value: exactly(gravity), scale: 'sg', atC })
  const knownSugar = (gravity: number, sugarGPerL: number, atC: number | null = 20) =>
    gauged({ method: 'known_sugar', hydrometer: stem(gravity, atC), sugarGPerL: exactly(sugarGPerL) }).abvPercent

  // A regression reached 2 % vol and 1 Brix on real drinks (thesis abstract, mountainscholar.org 986220de).
  it.each([
    [250, 2],
    [300, 2],
    [200, 1.6],
    [125, 1],
  ])('with %s g/L of known sugar is %s of strength', (sugarGPerL, plusMinus) => {
    expect(knownSugar(0.965 + sugarGPerL * 3.9e-4, sugarGPerL).plusMinus).toBeCloseTo(plusMinus, 9)
  })

  it('of two instruments is 2 % vol and 1 Brix', () => {
    const brix = { value: exactly(31), atC: 20 }
    const found = gauged({ method: 'two_instruments', brix, hydrometer: stem(1.05) })
    expect(found.abvPercent.plusMinus).toBeCloseTo(2, 9)
    expect(found.sugarGPerL.plusMinus).toBeCloseTo(10 * found.densityGPerMl.value, 9)
  })

  // Common practice, no source.
  it.each([
    [20, 0.5],
    [null, 2],
  ])('at %s °C is that of %s K, where nothing else is unknown', (atC, offK) => {
    const apart = knownSugar(0.96, 0, 20 + offK).value - knownSugar(0.96, 0, 20 - offK).value
    expect(knownSugar(0.96, 0, atC).plusMinus).toBeCloseTo(Math.abs(apart) / 2, 9)
  })

  // Estimated: half a per cent of alcohol left makes sugar water 0.7 kg/m³ lighter, and the mark is hit to 1 %.
  it('of boiled sugar is that of what was left, of the mark and of the warmth', () => {
    const sugarAt = (atC: number, moreKgPerM3 = 0) =>
      sugarOfBoiledGPerL({
        densityKgPerM3: densityFromStemKgPerM3({ value: 1.08, scale: 'sg', tempC: atC }) + moreKgPerM3,
        tempC: atC,
      })
    const left = (sugarAt(20, 0.7) - sugarAt(20, -0.7)) / 2
    const warm = (sugarAt(20.5) - sugarAt(19.5)) / 2
    const { sugarGPerL } = gauged({ method: 'boiled', before: stem(1.04), after: stem(1.08) })
    expect(sugarGPerL.plusMinus).toBeCloseTo(Math.hypot(left, warm, 0.01 * sugarAt(20)), 6)
  })
})

// Common practice, no source: three targets within 1 % of each other are one wish.
it.each([
  [1.0099, null],
  [1.0101, 'targets_clash'],
  [0.9901, null],
  [0.9899, 'targets_clash'],
])('a syrup %s times as sweet as was named: %s', (times, problem) => {
  const infusion = liquidFrom({ volumeMl: 1000, abvPercent: 80, sugarGPerL: 0 })
  const targets = { abvPercent: 30, sugarGPerL: 250 }
  const { sugarG, waterG } = syrupFor(infusion, { by: 'strength_and_sweetness', ...targets })
  const call = () => wishOf(infusion, { ...targets, sugarPerWater: sugarG / waterG / times })
  if (problem === null) expect(call).not.toThrow()
  else expect(call).toThrow(expect.objectContaining({ problem }))
})

// Common practice, no source: from 60 % vol on a spirit is one to dilute.
it.each([
  ['59.9%', 'vodka'],
  ['60%', 'neutral spirit'],
])('a strange word of %s may be %s', (strength, drink) => {
  const values = refusedValues(() => drinksIn(`1 l zorble ${strength}`, { blends: false }))
  expect(JSON.stringify(values)).toContain(`1 l ${strength} ${drink}`)
})

// Judgement: less than a tenth of its usual dose is no recipe. The limits of 2 and 10 g/L stand in the catalogue.
it.each([
  [0.102, true],
  [0.098, false],
])('%s of the usual sage is planned beside wormwood: %s', (left, isCapped) => {
  const spirits = [spirit(1000, 95)]
  const planned = (massG: number) =>
    jarOf(
      wish([{ id: 'wormwood', massG }, { id: 'sage' }], { spirits, named: { abvPercent: 25, sugarGPerL: 100 } }),
      spirits,
    ).plants[1]!
  const typical = planned(0.01).botanical.dose.typicalGPerL
  const sage = planned(2 * (0.98 - (left * typical) / 10))
  expect(sage.capped).toBe(isCapped)
  expect(sage.massG.value).toBeCloseTo(isCapped ? left * typical : typical, 6)
})
