import { expect, it, test } from 'vitest'
import { ripeIn } from '../../../core/botanical/find/ripe-in.ts'
import { isSouthern, northernMonth } from '../../../core/quantity/time/hemisphere.ts'
import { parseMonth } from '../../../core/quantity/time/parse-month.ts'

const ids = (month: number, isSouth: boolean) => ripeIn(month, isSouth).map(({ id }) => id)

// Common practice, no source: sloes after the first frosts, strawberries in early summer, half a year apart in the south.
it('tells what is ripe in the north, and in the south half a year later', () => {
  expect(ids(10, false)).toContain('sloe')
  expect(ids(10, false)).not.toContain('strawberry')
  expect(ids(6, false)).toContain('strawberry')
  expect(ids(12, true)).toContain('strawberry')
  expect(ids(4, true)).toContain('sloe')
})

it('offers nothing dried or roasted', () => {
  for (let month = 1; month <= 12; month++)
    expect(ripeIn(month, false).every(({ form }) => form.state === 'fresh')).toBe(true)
})

test.each([
  ['Europe/London', false],
  ['Europe/Rome', false],
  ['America/New_York', false],
  ['UTC', false],
  ['Australia/Sydney', true],
  ['Pacific/Auckland', true],
  ['Africa/Johannesburg', true],
  ['America/Sao_Paulo', true],
  ['America/Bogota', false],
])('%s: south %s', (zone, isSouth) => {
  expect(isSouthern(zone)).toBe(isSouth)
})

it('turns the year by half', () => {
  expect([1, 6, 7, 12].map((month) => northernMonth(month, true))).toEqual([7, 12, 1, 6])
  expect(northernMonth(3, false)).toBe(3)
})

it('reads a month as it is typed', () => {
  expect(['October', 'ottobre', '10', ' now ', 'adesso'].map(parseMonth)).toEqual([10, 10, 10, 'now', 'now'])
  expect(() => parseMonth('zorble')).toThrow()
  expect(() => parseMonth('13')).toThrow()
})
