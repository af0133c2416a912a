import { expect, it } from 'vitest'
import { isDoubtfulInfusion, isGlassToDilute, isTooStrongNeat } from '../../../core/liquid/neat.ts'

// Common practice, no source: liqueurs are drunk neat up to 60 % vol.
it.each([
  [59.9, false, false],
  [60, false, true],
  [60.1, true, true],
  [86, true, true],
])(
  'of %s %% vol says whether it is too strong neat (%s), and whether a glass of it is to be diluted (%s)',
  (percent, isTooStrong, isToDilute) => {
    expect(isTooStrongNeat(percent)).toBe(isTooStrong)
    expect(isGlassToDilute(percent)).toBe(isToDilute)
  },
)

// Common practice, no source: fresh plants take a spirit of 95 % vol down to about 85.
it.each([
  [84.99, false],
  [85, true],
  [85.01, true],
])('doubts that a strained infusion has %s %% vol: %s', (percent, isDoubtful) => {
  expect(isDoubtfulInfusion(percent)).toBe(isDoubtful)
})
