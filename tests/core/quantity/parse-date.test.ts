import { describe, expect, test } from 'vitest'
import { addMonths } from '../../../core/quantity/time/calendar-day.ts'
import { parseDate } from '../../../core/quantity/time/parse-date.ts'
import { refusal, refusedValues } from './refusal.ts'

const today = { year: 2026, month: 11, day: 25 }
const parse = (text: string, country: string | null = null) => parseDate(text, { today, country })
const iso = (text: string, country: string | null = null): string => {
  const { year, month, day, yearAssumed } = parse(text, country)
  return `${year}-${month}-${day}${yearAssumed ? '?' : ''}`
}

// 25 November 2026 is a Wednesday.
describe('a day of the week', () => {
  test.each([
    ['Saturday', '2026-11-21', '2026-11-28', '2026-11-28'],
    ['on sat', '2026-11-21', '2026-11-28', '2026-11-28'],
    ['Sabato', '2026-11-21', '2026-11-28', '2026-11-28'],
    ['lunedì', '2026-11-23', '2026-11-30', '2026-11-30'],
    ['mar', '2026-11-24', '2026-12-1', '2026-12-1'],
    ['Wednesday', '2026-11-25', '2026-11-25', '2026-12-2'],
    ['this Wednesday', '2026-11-25', '2026-11-25', '2026-11-25'],
    ['next Wednesday', '2026-12-2', '2026-12-2', '2026-12-2'],
    ['mercoledì prossimo', '2026-12-2', '2026-12-2', '2026-12-2'],
    ['last Wednesday', '2026-11-18', '2026-11-18', '2026-11-18'],
    ['sabato scorso', '2026-11-21', '2026-11-21', '2026-11-21'],
    ['next Saturday', '2026-11-28', '2026-11-28', '2026-11-28'],
    ['Sunday', '2026-11-22', '2026-11-29', '2026-11-29'],
  ])('%s is %s, %s or %s', (text, ...days) => {
    const read = (['past', 'from_today', 'after_today'] as const).map((side) => {
      const { year, month, day, yearAssumed } = parseDate(text, { today, country: null }, side)
      return `${year}-${month}-${day}${yearAssumed ? '?' : ''}`
    })
    expect(read).toEqual(days)
  })

  test.each(['week', 'next', 'this', 'Saturday Sunday', 'next last week', 'saturdays'])('%s is none', (text) => {
    expect(refusedValues(() => parse(text))).toMatchObject({ side: 'from_today' })
  })
})

describe('a date behind the day of its week', () => {
  test.each([
    ['Saturday 28 November', '2026-11-28'],
    ['Sat, Nov 28', '2026-11-28'],
    ['Monday 28 November 2022', '2022-11-28'],
    ['Thursday 24/12/2026', '2026-12-24'],
    ['Wednesday 25 November', '2026-11-25'],
  ])('%s is %s', (text, day) => {
    expect(iso(text)).toBe(day)
  })

  test.each([
    ['Friday 28 November', 'bad_value other_weekday'],
    ['Saturday 24/12/2026', 'bad_value other_weekday'],
    ['Monday 31 November', 'bad_value no_such_day'],
    ['Monday 31 November 2026', 'bad_value no_such_day'],
    ['Monday tomorrow', 'bad_value no_date'],
    ['Monday 6/7', 'ambiguous day_or_month'],
  ])('%s is refused', (text, refused) => {
    expect(refusal(() => parse(text))).toBe(refused)
  })

  test.each([
    ['sabato 21 novembre', '2026-11-21'],
    ['Friday 28 November', '2025-11-28'],
    ['Saturday 28 November', '2026-11-28'],
  ])('%s, of what has happened, is %s', (text, expected) => {
    const { year, month, day, yearAssumed } = parseDate(text, { today, country: null }, 'past')
    expect([`${year}-${month}-${day}`, yearAssumed]).toEqual([expected, false])
  })

  test('which day of the week it is, is told', () => {
    expect(refusedValues(() => parse('Friday 28 November'))).toMatchObject({
      day: { year: 2026, month: 11, day: 28 },
      weekday: 5,
    })
  })
})

describe('a date', () => {
  test.each([
    ['24 December', '2026-12-24?'],
    ['24 dicembre', '2026-12-24?'],
    ['il 24 dicembre', '2026-12-24?'],
    ['Dec 24', '2026-12-24?'],
    ['December 24th', '2026-12-24?'],
    ['the 24th of December 2027', '2027-12-24'],
    ['24 Dec 2026', '2026-12-24'],
    ['Dec. 24, 2025', '2025-12-24'],
    ['1° maggio', '2027-5-1?'],
    ['25 November', '2026-11-25?'],
    ['24 November', '2027-11-24?'],
    ['29 February', '2028-2-29?'],
    ['3 ago', '2027-8-3?'],
    ['2026-12-24', '2026-12-24'],
    ['2026/12/24', '2026-12-24'],
    ['24/12/2026', '2026-12-24'],
    ['24.12.2026', '2026-12-24'],
    ['6.7.2027', '2027-7-6'],
    ['7/7/2027', '2027-7-7'],
    ['today', '2026-11-25'],
    ['oggi', '2026-11-25'],
    ['Tomorrow', '2026-11-26'],
    ['domani', '2026-11-26'],
    ['yesterday', '2026-11-24'],
    ['ieri', '2026-11-24'],
    ['the day after tomorrow', '2026-11-27'],
    ['3 days ago', '2026-11-22'],
    ['3 giorni fa', '2026-11-22'],
    ['in 2 weeks', '2026-12-9'],
    ['tra 2 settimane', '2026-12-9'],
    ['a week ago', '2026-11-18'],
    ['un mese fa', '2026-10-25'],
    ['in 3 months', '2027-2-25'],
    ['in 20 years', '2046-11-25'],
    ['two days ago', '2026-11-23'],
    ['in two weeks', '2026-12-9'],
    ['ten days ago', '2026-11-15'],
    ['due giorni fa', '2026-11-23'],
    ['tra dieci giorni', '2026-12-5'],
    ['next week', '2026-12-2'],
    ['la settimana scorsa', '2026-11-18'],
  ])('%s is %s', (text, day) => {
    expect(iso(text)).toBe(day)
  })

  test.each([
    ['6/7', 'US', '2027-6-7?'],
    ['6/7', 'IT', '2027-7-6?'],
    ['24/6', 'it', '2027-6-24?'],
    ['12/24', 'US', '2026-12-24?'],
    ['6/7/27', 'US', '2027-6-7'],
    ['6/7/27', 'GB', '2027-7-6'],
    ['12/24/26', 'IT', '2026-12-24'],
  ])('%s in %s is %s', (text, country, day) => {
    expect(iso(text, country)).toBe(day)
  })

  test.each([
    ['24/6', null],
    ['6/7', null],
    ['6/7/2027', null],
    ['6.7', null],
    ['24.6', null],
    ['24/6', 'US'],
    ['6/24', 'IT'],
  ])('%s in %s is asked back', (text, country) => {
    expect(refusal(() => parse(text, country))).toBe('ambiguous day_or_month')
  })

  test('both days are offered', () => {
    expect(refusedValues(() => parse('6/7'))).toEqual({
      typed: '6/7',
      days: [
        { month: 7, day: 6 },
        { month: 6, day: 7 },
      ],
    })
    expect(refusedValues(() => parse('24/6'))).toEqual({ typed: '24/6', days: [{ month: 6, day: 24 }] })
  })

  test.each([
    ['', 'bad_value empty_text'],
    ['foo', 'bad_value no_date'],
    ['24', 'bad_value no_date'],
    ['December', 'bad_value no_date'],
    ['in 5 hours', 'bad_value no_date'],
    ['in 1.5 days', 'bad_value no_date'],
    ['5 days', 'bad_value no_date'],
    ['-3 days ago', 'bad_value no_date'],
    ['24 December 26', 'bad_value no_date'],
    ['31 November', 'bad_value no_such_day'],
    ['0 May', 'bad_value no_such_day'],
    ['31/31', 'bad_value no_such_day'],
    ['2026-02-30', 'bad_value no_such_day'],
    ['29 February 2027', 'bad_value no_such_day'],
    ['2026-13-01', 'bad_value no_such_day'],
    ['1 May 1066', 'bad_value date_too_far'],
    ['9999-12-31', 'bad_value date_too_far'],
    ['0000-01-01', 'bad_value date_too_far'],
    ['in 21 years', 'bad_value out_of_range'],
  ])('%s is refused', (text, refused) => {
    expect(refusal(() => parse(text))).toBe(refused)
  })

  test('a month after the 31st is the last day of a shorter month', () => {
    expect(addMonths({ year: 2027, month: 1, day: 31 }, 1)).toEqual({ year: 2027, month: 2, day: 28 })
    expect(addMonths({ year: 2027, month: 1, day: 31 }, -2)).toEqual({ year: 2026, month: 11, day: 30 })
    expect(addMonths({ year: 2026, month: 12, day: 24 }, 2)).toEqual({ year: 2027, month: 2, day: 24 })
  })
})

// 2100 is no leap year (ISO 8601, Gregorian calendar): eight years lie between two days of its kind.
test('29 February is found beyond a year that has none', () => {
  const { year, month, day } = parseDate('29 February', { today: { year: 2096, month: 3, day: 1 }, country: null })
  expect([year, month, day]).toEqual([2104, 2, 29])
})
