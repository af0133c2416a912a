import { expect, it } from 'vitest'
import { newRate } from '../../../bot/discord/receive/rate-limit.ts'

const MINUTE_MS = 60_000

it('takes thirty in any minute, and says how long to wait', () => {
  const rate = newRate()
  for (let index = 0; index < 30; index++) expect(rate.take('a', index * 1000)).toBe(0)
  expect(rate.take('a', 29_000)).toBe(31)
  expect(rate.take('a', 59_999)).toBe(1)
  // What was refused is not counted: as the first ones grow old, one more each is taken.
  expect(rate.take('a', MINUTE_MS)).toBe(0)
  expect(rate.take('a', MINUTE_MS)).toBe(1)
  expect(rate.take('a', MINUTE_MS + 1000)).toBe(0)
})

it('counts everybody by themselves', () => {
  const rate = newRate()
  for (let index = 0; index < 30; index++) rate.take('a', 0)
  expect(rate.take('a', 0)).toBe(60)
  expect(rate.take('b', 0)).toBe(0)
})

it('remembers nobody longer than it has to', () => {
  const rate = newRate()
  for (let index = 0; index < 100_000; index++) rate.take(`${index}`, index)
  expect(rate.size()).toBeLessThanOrEqual(MINUTE_MS)
  rate.take('last', 1_000_000)
  expect(rate.size()).toBe(1)
})

it('holds nobody up when the clock is put back', () => {
  const rate = newRate()
  for (let index = 0; index < 30; index++) rate.take('a', 10 * MINUTE_MS)
  expect(rate.take('a', 0)).toBe(0)
  expect(rate.size()).toBe(1)
})
