import { describe, expect, it } from 'vitest'
import { momentOf } from '../../../core/jar/record/entry-time.ts'
import { record } from '../../../core/jar/record/record.ts'
import { refusal } from '../quantity/refusal.ts'
import { DAY_MS, entriesOf, META, on, START_MS, started } from './jars.ts'

const nowMs = START_MS + 10 * DAY_MS + 9 * 3_600_000
const day = (month: number, of: number, year = 2026) => ({ year, month, day: of })
const here = { nowMs, zone: 'UTC', entries: entriesOf(started()) }

describe('when it happened', () => {
  it('is now where no day was given, on the day that it is in the zone', () => {
    expect(momentOf(null, here)).toEqual({ atMs: nowMs, day: '2026-11-11', zone: 'UTC' })
    // 21:00 in UTC is 10:00 of the next day in Auckland.
    expect(momentOf(null, { ...here, zone: 'Pacific/Auckland' }).day).toBe('2026-11-12')
  })

  it('is noon of a day that is past', () => {
    expect(momentOf(day(11, 5), here)).toEqual({ atMs: on(4).atMs, day: '2026-11-05', zone: 'UTC' })
    expect(momentOf(day(11, 5), { ...here, zone: 'Pacific/Auckland' }).atMs).toBe(Date.UTC(2026, 10, 4, 23))
  })

  it('is after all else of that day', () => {
    const entries = record(here.entries, { kind: 'shaken' }, on(4, 400), META).entries
    expect(momentOf(day(11, 5), { ...here, entries }).atMs).toBe(on(4, 400).atMs)
    expect(momentOf(day(11, 6), { ...here, entries }).atMs).toBe(on(5).atMs)
    // Entered at the same instant, it comes later all the same.
    const moment = momentOf(day(11, 5), { ...here, entries })
    const after = record(
      entries,
      { kind: 'strained', measured: null, strength: null, rinseWaterG: { value: 0, plusMinus: 0 } },
      moment,
      META,
    )
    expect(after.unusual).toEqual([])
  })

  it('is now, not noon, on a morning', () => {
    const morning = { ...here, nowMs: Date.UTC(2026, 10, 11, 7) }
    expect(momentOf(day(11, 11), morning).atMs).toBe(morning.nowMs)
  })

  it('comes after what was entered before a clock was set back', () => {
    const entries = record(here.entries, { kind: 'shaken' }, { ...on(10, 600) }, META).entries
    const back = { ...here, entries, nowMs: on(10, 30).atMs }
    expect(momentOf(null, back).atMs).toBe(on(10, 600).atMs)
    expect(momentOf(day(11, 11), back).atMs).toBe(on(10, 600).atMs)
  })

  it('is not tomorrow, nor before the start, nor more than 20 years ago', () => {
    expect(refusal(() => momentOf(day(11, 12), here))).toBe('bad_value in_the_future')
    expect(refusal(() => momentOf(day(10, 31), here))).toBe('wrong_stage before_start')
    expect(momentOf(day(11, 1), here).atMs).toBe(START_MS)
    const none = { ...here, entries: [] }
    expect(momentOf(day(11, 11, 2006), none).day).toBe('2006-11-11')
    expect(refusal(() => momentOf(day(11, 10, 2006), none))).toBe('bad_value date_too_far')
  })
})
