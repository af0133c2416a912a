import { expect, it, test } from 'vitest'
import { abvFromDensity } from '../../../../core/liquid/ethanol-water.ts'
import { densityGPerMl, liquidFrom } from '../../../../core/liquid/liquid.ts'
import { abvPercentUnderSolids } from '../../../../core/liquid/measure/obscuration.ts'

test('1 g/L hides 0.4 proof, 0.2 % vol, between 80 and 100 proof on the mean (27 CFR 30.32(b), half of the last digit)', () => {
  const hidden = [40, 45, 50].map(
    (percent) => abvPercentUnderSolids({ apparentPercent: percent, solidsGPerL: 1 }) - percent,
  )
  expect(Math.abs(hidden.reduce((sum, each) => sum + each) / 3 - 0.2)).toBeLessThanOrEqual(0.025)
})

test.each([
  [8, 20],
  [12, 3],
  [40, 10],
  [60, 50],
  [85, 6],
])('finds back %f % vol under %f g/L from the density that a hydrometer sees', (percent, sugarGPerL) => {
  const seen = abvFromDensity(densityGPerMl(liquidFrom({ volumeMl: 1000, abvPercent: percent, sugarGPerL })) * 1000, 20)
  expect(abvPercentUnderSolids({ apparentPercent: seen, solidsGPerL: sugarGPerL })).toBeCloseTo(percent, 3)
})

it('changes nothing without sugar', () => {
  expect(abvPercentUnderSolids({ apparentPercent: 40, solidsGPerL: 0 })).toBe(40)
})

it('stops at the strongest that there is room for', () => {
  expect(abvPercentUnderSolids({ apparentPercent: 100, solidsGPerL: 50 })).toBeLessThan(97.5)
})
