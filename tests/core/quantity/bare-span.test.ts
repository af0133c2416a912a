import { describe, expect, test } from 'vitest'
import { parseDate } from '../../../core/quantity/time/parse-date.ts'
import { refusal } from './refusal.ts'

const today = { year: 2026, month: 11, day: 25 }

describe('a bare length of time', () => {
  test.each([
    ['2 weeks', '2026-12-9'],
    ['10 days', '2026-12-5'],
    ['un mese', '2026-12-25'],
    ['three months', '2027-2-25'],
  ])('%s is counted on from today where the day lies ahead, and else is no date', (text, day) => {
    const read = parseDate(text, { today, country: null }, 'after_today')
    expect(`${read.year}-${read.month}-${read.day}`).toBe(day)
    for (const side of ['past', 'from_today'] as const) {
      expect(refusal(() => parseDate(text, { today, country: null }, side))).toBe('bad_value no_date')
    }
  })

  test.each(['2 weeks ago', '2 weeks later', '2 hours', '30 years'])('%s is none', (text) => {
    const ahead = () => parseDate(text, { today, country: null }, 'after_today')
    if (text.endsWith('ago')) expect(ahead().day).toBe(11)
    else expect(refusal(ahead)).toMatch(/^bad_value (?:no_date|out_of_range)$/)
  })
})
