import fc from 'fast-check'
import { expect, it } from 'vitest'
import { wholePercents } from '../../../core/quantity/measured/whole-percents.ts'
import { runs, SEED } from '../../runs.ts'

it('gives what was left to those that lost most', () => {
  expect(wholePercents([0.305, 0.575, 0.12])).toEqual([31, 57, 12])
  expect(wholePercents([1 / 3, 1 / 3, 1 / 3])).toEqual([34, 33, 33])
  expect(wholePercents([0, 1, 0])).toEqual([0, 100, 0])
})

it('sums to 100, each within 1 of its share', () => {
  const parts = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 6 })
  fc.assert(
    fc.property(parts, (each) => {
      const sum = each.reduce((all, part) => all + part, 0)
      fc.pre(sum > 1e-6)
      const shares = each.map((part) => part / sum)
      const whole = wholePercents(shares)
      expect(whole.reduce((all, percent) => all + percent, 0)).toBe(100)
      for (const [at, percent] of whole.entries()) expect(Math.abs(percent - 100 * shares[at]!)).toBeLessThan(1)
    }),
    { seed: SEED, numRuns: runs(500, 20_000) },
  )
})
