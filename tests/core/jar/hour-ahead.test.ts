import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { hourAhead } from '../../../core/jar/tasks/hour-ahead.ts'

const ROME = 'Europe/Rome'
const ms = (when: string): number => Temporal.ZonedDateTime.from(`${when}[${ROME}]`).epochMilliseconds
const shown = (at: number): string =>
  Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(ROME).toPlainDateTime().toString().slice(0, 16)
const from = (now: string, text: string): string => shown(hourAhead(text)!(ms(now), ROME))

describe('an hour still to come', () => {
  it.each([
    ['2026-11-05T09:30', '18:00', '2026-11-05T18:00'],
    ['2026-11-05T09:30', 'today at 6 pm', '2026-11-05T18:00'],
    ['2026-11-05T09:30', 'alle 18:30', '2026-11-05T18:30'],
    ['2026-11-05T09:30', 'noon', '2026-11-05T12:00'],
    ['2026-11-05T19:30', '18:00', '2026-11-06T18:00'],
    ['2026-11-05T18:00', '18:00', '2026-11-06T18:00'],
    ['2026-11-05T09:30', '3 hours', '2026-11-05T12:30'],
    ['2026-11-05T23:30', 'in 1 hour', '2026-11-06T00:30'],
    ['2026-11-05T09:30', 'an hour', '2026-11-05T10:30'],
    ['2026-11-05T09:30', 'tra 2 ore', '2026-11-05T11:30'],
    ['2026-11-05T09:30', '45 min', '2026-11-05T10:15'],
    // Clocks go forward at 02:00 that night: three hours are three hours.
    ['2026-03-29T01:00', '3 hours', '2026-03-29T05:00'],
    ['2026-11-05T09:30', 'later today', '2026-11-05T18:00'],
    ['2026-11-05T16:10', 'later today', '2026-11-05T19:10'],
    ['2026-11-05T20:10', 'Later', '2026-11-05T22:00'],
  ])('on %s: %s is %s', (now, text, wanted) => {
    expect(from(now, text)).toBe(wanted)
  })

  it.each(['tomorrow', '5 January', '3 days', 'in 2 weeks', '18.10', '9', '2026-12-24', 'soon'])(
    'is nothing of: %s',
    (text) => {
      expect(hourAhead(text)).toBeNull()
    },
  )

  it.each([
    ['25:00', 'no_clock_time'],
    ['13 pm', 'no_clock_time'],
  ])('%s: %s', (text, problem) => {
    expect(() => hourAhead(text)).toThrow(problem)
  })

  it('refuses none at all, and later today late in the evening', () => {
    expect(() => from('2026-11-05T09:30', '0 hours')).toThrow('not_ahead')
    expect(() => from('2026-11-05T22:00', 'later today')).toThrow('not_ahead_today')
  })
})
