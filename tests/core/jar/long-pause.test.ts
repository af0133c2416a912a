import { expect, it } from 'vitest'
import { isLongPause } from '../../../core/jar/tasks/duty.ts'

// Common practice, no source: whoever means a longer pause than a quarter of a year types its year.
it.each([
  [92, false],
  [93, true],
])('a day without a year, %i days ahead, is rather one that has passed: %s', (days, isLong) => {
  expect(isLongPause(days)).toBe(isLong)
})
