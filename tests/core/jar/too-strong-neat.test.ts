import { expect, it } from 'vitest'
import { isTooStrongNeat } from '../../../core/jar/state/too-strong-neat.ts'

it.each([
  [59.9, false],
  [60, false],
  [60.1, true],
  [86, true],
])('of %s %% vol says whether it is too strong to be drunk neat', (value, isTooStrong) => {
  expect(isTooStrongNeat({ value, plusMinus: 5 })).toBe(isTooStrong)
})
