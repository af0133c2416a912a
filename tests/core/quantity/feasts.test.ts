import { expect, it } from 'vitest'
import { feastDay } from '../../../core/quantity/time/feasts.ts'

// Easter of 2027 is 28 March, of 2026 it was 5 April (Meeus, Astronomical Algorithms, ch. 8).
const TODAY = { year: 2026, month: 12, day: 1 }

it.each([
  ['new years eve', '31 December'],
  ['hogmanay', '31 December'],
  ['epiphany', '6 January'],
  ['twelfth night', '5 January'],
  ['st patrick s day', '17 March'],
  ['st valentines', '14 February'],
  ['san martino', '11 November'],
  ['bonfire night', '5 November'],
  ['pasquetta', '2027-03-29'],
  ['good friday', '2027-03-26'],
  ['pancake day', '2027-02-09'],
  ['whitsun', '2027-05-16'],
])('%s is on %s', (said, day) => {
  expect(feastDay(said, TODAY, 'after_today')).toBe(day)
})

it('looks behind where it is told of what is past', () => {
  expect(feastDay('easter monday', TODAY, 'past')).toBe('2026-04-06')
  expect(feastDay('easter monday', { year: 2027, month: 1, day: 6 }, 'past')).toBe('2026-04-06')
  expect(feastDay('easter monday', { year: 2026, month: 4, day: 6 }, 'past')).toBe('2026-04-06')
  expect(feastDay('easter monday', { year: 2026, month: 4, day: 6 }, 'after_today')).toBe('2027-03-29')
})

it.each(['saint', 'easter bunny', 'burns', 'good', 'bonfire'])('%s is none', (said) => {
  expect(feastDay(said, TODAY, 'after_today')).toBeNull()
})
