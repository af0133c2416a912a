import { expect, it } from 'vitest'
import { DomainError } from '../../../core/domain-error.ts'
import { parseClockTime } from '../../../core/quantity/time/parse-clock-time.ts'

it.each<[typed: string, minutes: number]>([
  ['9', 540],
  ['09:00', 540],
  ['9 am', 540],
  ['9AM', 540],
  ['at 9 a.m.', 540],
  ['18.30', 1110],
  ['18h30', 1110],
  ['6:30 pm', 1110],
  ['ore 21', 1260],
  ['21h', 1260],
  ["9 o'clock", 540],
  ['12 am', 0],
  ['12 pm', 720],
  ['12:15 am', 15],
  ['noon', 720],
  ['midnight', 0],
  ['0', 0],
  ['23:59', 1439],
])('reads %s as minute %i', (typed, minutes) => {
  expect(parseClockTime(typed)).toBe(minutes)
})

it.each(['24', '24:00', '9:60', '9.5', '9:5', '13 pm', '0 am', '-9', '9 to 5', 'soon', '', '99', '9:00:00', '９'])(
  'does not take %s for a time of day',
  (typed) => {
    expect(() => parseClockTime(typed)).toThrow(DomainError)
    expect(() => parseClockTime(typed)).toThrow('no_clock_time')
  },
)
