import fc from 'fast-check'
import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { dayAt, dayNumberAt, instantAt, minutesAt } from '../../../core/quantity/time/zone.ts'
import { runs, SEED } from '../../runs.ts'

/** With half hours, quarters, summers in the south, none at all, and a day or a Ramadan left out. */
const ZONES = [
  'Europe/Rome',
  'America/New_York',
  'America/St_Johns',
  'America/Sao_Paulo',
  'Africa/Casablanca',
  'Asia/Kolkata',
  'Asia/Kathmandu',
  'Australia/Lord_Howe',
  'Pacific/Apia',
  'Pacific/Chatham',
  'UTC',
]

/** The independent reference: temporal-polyfill, disambiguation 'compatible'. */
const told = (zone: string, date: Temporal.PlainDate, minutes: number): number =>
  date
    .toPlainDateTime({ hour: Math.floor(minutes / 60), minute: minutes % 60 })
    .toZonedDateTime(zone, { disambiguation: 'compatible' }).epochMilliseconds

const wrongly = (zone: string, dates: readonly Temporal.PlainDate[], minutes: readonly number[]): readonly string[] =>
  dates.flatMap((date) =>
    minutes
      .filter((each) => instantAt(zone, date, each) !== told(zone, date, each))
      .map((each) => `${zone} ${date} ${each}`),
  )

/** Days on which clocks are set, with those before and after, of some years. */
function changeOvers(zone: string, fromYear: number, toYear: number): readonly Temporal.PlainDate[] {
  const dates: Temporal.PlainDate[] = []
  let at: Temporal.ZonedDateTime | null = Temporal.ZonedDateTime.from(`${fromYear}-01-01T00:00[${zone}]`)
  for (at = at.getTimeZoneTransition('next'); at !== null && at.year <= toYear; at = at.getTimeZoneTransition('next')) {
    const day = at.toPlainDate()
    dates.push(day.subtract({ days: 1 }), day, day.add({ days: 1 }))
  }
  return dates
}

const everyHalfHour = Array.from({ length: 48 }, (_, index) => index * 30)

describe.each(ZONES)('in %s', (zone) => {
  const first = Temporal.PlainDate.from('2011-01-01')

  it('has nine in the morning where the reference has it, for twenty years', () => {
    const stride = runs(3, 1)
    const mornings = Array.from({ length: Math.floor((20 * 365.25) / stride) }, (_, n) =>
      first.add({ days: n * stride }),
    )
    expect(mornings.at(-1)!.year).toBe(2030)
    expect(wrongly(zone, mornings, [540])).toEqual([])
  })

  it('has every half hour of the days on which clocks are set where the reference has it', () => {
    const dates = changeOvers(zone, 2011, runs(2016, 2030))
    expect(dates.length > 0).toBe(!['UTC', 'Asia/Kolkata', 'Asia/Kathmandu'].includes(zone))
    expect(wrongly(zone, dates, everyHalfHour)).toEqual([])
  })

  it('shows the day and the time that the reference shows, at any instant of 1900 to 2199', () => {
    const instants = fc.integer({ min: Date.UTC(1900, 0, 2) / 1000, max: Date.UTC(2199, 11, 30) / 1000 })
    fc.assert(
      fc.property(instants, fc.integer({ min: 0, max: 999 }), (seconds, millis) => {
        const ms = seconds * 1000 + millis
        const at = Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO(zone)
        expect(dayAt(zone, ms)).toEqual({ year: at.year, month: at.month, day: at.day })
        expect(dayNumberAt(zone, ms)).toBe(at.toPlainDate().since('1970-01-01', { largestUnit: 'days' }).days)
        expect(minutesAt(zone, ms)).toBe(at.hour * 60 + at.minute)
        expect(instantAt(zone, dayAt(zone, ms), 540)).toBe(told(zone, at.toPlainDate(), 540))
      }),
      { seed: SEED, numRuns: runs(60, 5000) },
    )
  })
})

it('moves 02:30 on to 03:30 where clocks go forward and takes the first where they go back', () => {
  // Italy, 29 March and 25 October 2026: last Sundays, at 01:00 UTC (Directive 2000/84/EC, articles 2 and 3).
  expect(instantAt('Europe/Rome', { year: 2026, month: 3, day: 29 }, 150)).toBe(Date.UTC(2026, 2, 29, 1, 30))
  expect(minutesAt('Europe/Rome', Date.UTC(2026, 2, 29, 1, 30))).toBe(210)
  expect(instantAt('Europe/Rome', { year: 2026, month: 10, day: 25 }, 150)).toBe(Date.UTC(2026, 9, 25, 0, 30))
})

it('moves half an hour on where clocks go forward by half an hour', () => {
  const at = instantAt('Australia/Lord_Howe', { year: 2026, month: 10, day: 4 }, 135)
  expect(minutesAt('Australia/Lord_Howe', at)).toBe(165)
})

it('moves a day that was left out on to the next', () => {
  const at = instantAt('Pacific/Apia', { year: 2011, month: 12, day: 30 }, 540)
  expect(at).toBe(instantAt('Pacific/Apia', { year: 2011, month: 12, day: 31 }, 540))
  expect(dayAt('Pacific/Apia', at)).toEqual({ year: 2011, month: 12, day: 31 })
  expect(at - instantAt('Pacific/Apia', { year: 2011, month: 12, day: 29 }, 540)).toBe(86_400_000)
})

it('knows clocks that were behind by odd seconds', () => {
  // Liberia kept 0:44:30 behind UTC until 7 January 1972 (IANA time zone database, file africa).
  expect(instantAt('Africa/Monrovia', { year: 1970, month: 1, day: 1 }, 720)).toBe(Date.UTC(1970, 0, 1, 12, 44, 30))
  expect(minutesAt('Africa/Monrovia', Date.UTC(1970, 0, 1, 12, 44, 30))).toBe(720)
  expect(minutesAt('Africa/Monrovia', Date.UTC(1970, 0, 1, 12, 44, 29))).toBe(719)
})

it('agrees with the reference in every zone there is, on days all over three centuries', () => {
  const zones = Intl.supportedValuesOf('timeZone')
  const stride = runs(40, 1)
  const days = runs(12, 120)
  const random = Array.from({ length: days }, (_, n) =>
    Temporal.PlainDate.from('1900-01-02').add({ days: ((n * 109_570) / days) | 0 }),
  )
  for (const zone of zones.filter((_, index) => index % stride === 0)) {
    expect(wrongly(zone, [...random, ...changeOvers(zone, 1900, runs(1920, 2037))], [0, 150, 540])).toEqual([])
  }
})
