import { expect, it } from 'vitest'
import { caffeineMgInGlass, MOST_CAFFEINE_MG } from '../../../core/botanical/limits/caffeine.ts'

// Common practice, no source: up to 20 mg in a glass nobody notices; said in tens, rounded up.
it.each([
  [0, null],
  [19, null],
  [20, null],
  [20.1, 30],
  [30, 30],
  [30.1, 40],
])('of %s mg in a glass says %s', (mg, said) => {
  expect(caffeineMgInGlass(mg / MOST_CAFFEINE_MG)).toBe(said)
})
