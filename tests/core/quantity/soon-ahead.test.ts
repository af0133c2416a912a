import { expect, it } from 'vitest'
import { isSoonAhead } from '../../../core/quantity/time/parse-date.ts'

// Common practice, no source: a month ahead.
it.each([
  [0, false],
  [1, true],
  [30, true],
  [31, false],
])('means the coming day where it is %s days ahead: %s', (days, isSoon) => {
  expect(isSoonAhead(days)).toBe(isSoon)
})
