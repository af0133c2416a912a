import { expect, it } from 'vitest'
import { hasCome, isGivenUp, LONGEST_PAUSE_MS, pauseMs, SENDING_MS } from '../../../bot/reminders/quiet-pause.ts'
import { DAY_MS, MINUTE_MS } from './people.ts'

it('pauses for 1, 2, 4 … minutes, an hour at the most', () => {
  const minutes = [1, 2, 3, 4, 5, 6, 7, 8, 1000].map((attempts) => pauseMs(attempts) / MINUTE_MS)
  expect(minutes).toEqual([1, 2, 4, 8, 16, 32, 60, 60, 60])
})

it('leaves a nudge on its way alone for two minutes', () => {
  expect(SENDING_MS).toBe(2 * MINUTE_MS)
})

it('gives up after a day', () => {
  expect(isGivenUp(1000, 1000 + DAY_MS - 1)).toBe(false)
  expect(isGivenUp(1000, 1000 + DAY_MS)).toBe(true)
})

it.each([
  [0, true],
  [-1, true],
  [1, false],
  [LONGEST_PAUSE_MS, false],
  [LONGEST_PAUSE_MS + 1, true],
])('a time %s ms ahead has come: %s', (aheadMs, isThere) => {
  expect(hasCome(5_000_000 + aheadMs, 5_000_000)).toBe(isThere)
})
