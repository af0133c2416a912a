import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { digits, plusMinusDigits, spreadDigits } from '../../../core/quantity/measured/shown-digits.ts'
import { runs } from './runs.ts'

const written = ({ roundedValue, decimals }: { roundedValue: number; decimals: number }) =>
  roundedValue.toFixed(decimals)

describe('digits', () => {
  test.each<[number, number, string]>([
    [1563.2, 31, '1560'],
    [30.2345, 0.9, '30.2'],
    [30.2345, 0.31, '30.2'],
    [30.2345, 0.12, '30.2'],
    [250, 5, '250'],
    [254.9, 10, '250'],
    [563.2, 0.96, '563'],
    [0.8451, 0.0007, '0.8451'],
    [12.34567, 0.00001, '12.35'],
    [9.99961, 0.0001, '10.00'],
    [9.96, 0.1, '10.0'],
    [3, 40, '3'],
    [1234.5, 0, '1235'],
    [12.5, 0, '12.50'],
    [-18.26, 1.5, '-18'],
    [0, 0, '0'],
    [0, 0.05, '0.00'],
    [0, 30, '0'],
    [123456789, 1000, '123500000'],
    [1.5e-7, 2e-9, '0.000000150'],
    [12.3, Number.POSITIVE_INFINITY, '12.30'],
  ])('%f ± %f is written %s', (value, plusMinus, text) => {
    expect(written(digits(value, plusMinus))).toBe(text)
  })

  test.each<[number, string]>([
    [0.9, '0.9'],
    [0.31, '0.4'],
    [0.3, '0.3'],
    [0.1 + 0.2, '0.3'],
    [0.121, '0.13'],
    [0.1, '0.10'],
    [0.195, '0.2'],
    [0.96, '1'],
    [31, '40'],
    [12, '12'],
    [140.2, '150'],
    [0, '0'],
    [Number.NaN, '0'],
    [2e-9, '0.000000002'],
    [3.1e20, '400000000000000000000'],
  ])('± %f is written %s', (plusMinus, text) => {
    expect(written(plusMinusDigits(plusMinus))).toBe(text)
  })

  test.each<[number, number, string]>([
    [30.0123, 0.52, '30.0 ± 0.6'],
    [30.0123, 1.12, '30.0 ± 1.2'],
    [4.2, 1.5, '4.2 ± 1.5'],
    [254.9, 10, '250 ± 10'],
    [1563.2, 31, '1560 ± 40'],
    [0.934, 0.0187, '0.934 ± 0.019'],
    [1234.4, 0.3, '1234 ± 1'],
    [12.5, 0, '12.50 ± 0'],
    [0, 0.05, '0.00 ± 0.05'],
    [0.5, 40, '0.5 ± 40'],
    [3, 40, '3 ± 40'],
  ])('%f ± %f stand side by side as %s', (value, plusMinus, text) => {
    const spread = spreadDigits(value, plusMinus)
    expect(`${written(spread.value)} ± ${written(spread.plusMinus)}`).toBe(text)
  })

  test('a ± has never more decimals than its value, and is never shown smaller than it is', () => {
    const number = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 })
    const half = fc.double({ noNaN: true, noDefaultInfinity: true, min: 1e-6, max: 1e5 })
    fc.assert(
      fc.property(number, half, (value, plusMinus) => {
        const spread = spreadDigits(value, plusMinus)
        expect(spread.plusMinus.decimals).toBeLessThanOrEqual(spread.value.decimals)
        expect(spread.plusMinus.roundedValue).toBeGreaterThanOrEqual(plusMinus * (1 - 1e-8))
        expect(Number(written(spread.plusMinus))).toBeCloseTo(spread.plusMinus.roundedValue, 12)
      }),
      runs,
    )
  })

  test('every finite number keeps 1 to 4 significant digits, and is moved by no more than its ± or half its 4th', () => {
    const finite = fc.double({ noNaN: true, noDefaultInfinity: true })
    fc.assert(
      fc.property(finite, finite, (value, plusMinus) => {
        const { roundedValue, decimals } = digits(value, plusMinus)
        expect(Number.isFinite(roundedValue)).toBe(true)
        expect(decimals).toBeGreaterThanOrEqual(0)
        expect(decimals).toBeLessThanOrEqual(100)
        if (Math.abs(value) > 1.7e308) return
        const significant = Math.abs(roundedValue).toExponential().split('e')[0]?.replace('.', '') ?? ''
        expect(significant.length).toBeLessThanOrEqual(4)
        if (value !== 0) expect(roundedValue).not.toBe(0)
        const allowed = Math.max(Math.abs(plusMinus), 0.0005 * Math.abs(value))
        expect(Math.abs(roundedValue - value)).toBeLessThanOrEqual(allowed * 1.000001 + Number.MIN_VALUE)
      }),
      runs,
    )
  })
})
