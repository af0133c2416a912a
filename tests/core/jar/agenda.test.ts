import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { agenda } from '../../../core/jar/tasks/agenda.ts'
import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import { runs, SEED } from '../../runs.ts'
import {
  BOTTLED,
  diary,
  FILTERED,
  type Line,
  PEEL,
  peel,
  putOff,
  SHAKEN,
  START,
  STRAINED,
  SWEETENED,
  seen,
  settings,
  TASTED,
} from './diary.ts'
import { added, plant, started } from './jars.ts'
import { lives } from './lives.ts'

describe('a steeping jar', () => {
  it('counts its days to the last for straining', () => {
    expect(seen(diary([START]), '2026-11-01 12:00')).toEqual({
      today: [],
      next: 'shake 2026-11-02 09:00',
      days: '1 of 36',
    })
    expect(seen(diary([START]), '2026-12-06 12:00').days).toBe('36 of 36')
    const open = diary([['2026-11-01 10:00', peel({ strainBy: null })]])
    expect(seen(open, '2026-11-01 12:00').days).toBe('1 of 22')
    const unknown = diary([['2026-11-01 10:00', peel({ strainFrom: null, strainBy: null })]])
    expect(seen(unknown, '2026-11-02 12:00').days).toBe('2 of null')
  })

  it('asks for a shake until it was shaken that day, before and after nine', () => {
    expect(seen(diary([START]), '2026-11-02 07:00').today).toEqual(['shake 2026-11-02 due'])
    expect(seen(diary([START]), '2026-11-20 12:00').today).toContain('shake 2026-11-02 due')
    const shaken = diary([START, ['2026-11-02 08:00', SHAKEN]])
    expect(seen(shaken, '2026-11-02 12:00')).toMatchObject({ today: [], next: 'shake 2026-11-03 09:00' })
    expect(seen(shaken, '2026-11-03 07:00', settings({ shake: 'every_other_day' })).today).toEqual([])
    expect(seen(shaken, '2026-11-05 07:00', settings({ shake: 'off' })).today).toEqual([])
  })

  it('looks beyond what is asked today for what comes next', () => {
    expect(seen(diary([START]), '2026-11-02 12:00').next).toBe('taste 2026-11-11 09:00')
  })

  it('says from when and by when to strain, and what is overdue first', () => {
    const entries = diary([START, ['2026-11-12 18:00', TASTED], ['2026-11-24 08:00', SHAKEN]])
    expect(seen(entries, '2026-11-24 12:00').today).toEqual(['strain 2026-11-22 2026-12-06 due'])
    expect(seen(entries, '2026-12-06 23:00').today[0]).toBe('strain 2026-11-22 2026-12-06 due')
    expect(seen(entries, '2026-12-07 00:00').today[0]).toBe('strain 2026-11-22 2026-12-06 overdue')
  })

  it('tastes once, or every day where plants are quick', () => {
    expect(seen(diary([START, ['2026-11-12 18:00', TASTED]]), '2026-11-13 12:00').today).not.toContain('taste')
    expect(seen(diary([START]), '2026-11-13 12:00').today[0]).toBe('taste 2026-11-11 due')
    const basil: Line = [
      '2026-11-01 10:00',
      peel({ tasteFrom: '2026-11-06', strainFrom: '2026-11-08', strainBy: '2026-11-11' }),
    ]
    const entries = diary([basil, ['2026-11-07 08:00', TASTED]])
    expect(seen(entries, '2026-11-07 12:00').today.some((task) => task.startsWith('taste'))).toBe(false)
    expect(seen(entries, '2026-11-08 12:00').today).toContain('taste 2026-11-06 2026-11-11 due')
    expect(seen(entries, '2026-11-12 12:00').today[0]).toBe('strain 2026-11-08 2026-11-11 overdue')
    expect(seen(entries, '2026-11-12 12:00').today.some((task) => task.startsWith('taste'))).toBe(false)
  })

  it('asks for plants that go in later, from their day', () => {
    const plants = [plant('lemon_peel', 100), plant('basil', 20, { addOn: '2026-11-15' })]
    const start: Line = ['2026-11-01 10:00', started({ plants, plan: PEEL })]
    expect(seen(diary([start]), '2026-11-15 07:00').today[0]).toBe('add 2026-11-15 2026-11-15 due')
    expect(seen(diary([start]), '2026-11-16 07:00').today[0]).toBe('add 2026-11-15 2026-11-15 overdue')
    const both = diary([start, ['2026-11-15 08:00', added({ plants: [plant('basil', 20)] })]])
    expect(seen(both, '2026-11-16 07:00').today.some((task) => task.startsWith('add'))).toBe(false)
  })

  it('goes by the hour where plants are done within the day', () => {
    const plan = { isHours: true, steepHours: { min: 6, max: 20 }, strainFrom: '2026-11-01', strainBy: '2026-11-02' }
    const entries = diary([['2026-11-01 10:00', peel(plan)]])
    expect(seen(entries, '2026-11-01 15:59')).toMatchObject({ today: [], next: 'taste 2026-11-01 16:00' })
    expect(seen(entries, '2026-11-01 16:00').today).toEqual([
      'strain 2026-11-01 2026-11-02 due',
      'taste 2026-11-01 2026-11-02 due',
    ])
    expect(seen(entries, '2026-11-02 06:01').today).toEqual(['strain 2026-11-01 2026-11-02 overdue'])
  })
})

describe('a strained jar', () => {
  it('asks for syrup at once, and is late from the day after the next', () => {
    expect(seen(diary([START, STRAINED]), '2026-11-25 20:00')).toEqual({
      today: ['sweeten 2026-11-25 due'],
      next: null,
      days: '25 of null',
    })
    expect(seen(diary([START, STRAINED]), '2026-11-26 20:00').today).toEqual(['sweeten 2026-11-25 due'])
    expect(seen(diary([START, STRAINED]), '2026-11-27 20:00').today).toEqual(['sweeten 2026-11-25 overdue'])
    const noTargets: Line = ['2026-11-01 10:00', peel({ targets: null })]
    expect(seen(diary([noTargets, STRAINED]), '2026-12-20 20:00').today).toEqual(['sweeten 2026-11-25 due'])
  })

  it('asks to bottle, then tells when it is ready until a bottle is opened', () => {
    const entries = [START, STRAINED, SWEETENED]
    expect(seen(diary(entries), '2026-11-26 20:00')).toEqual({
      today: [],
      next: 'bottle 2026-11-29 09:00',
      days: '26 of 56',
    })
    expect(seen(diary(entries), '2026-11-29 20:00')).toMatchObject({
      today: ['bottle 2026-11-29 due'],
      next: 'ready 2026-12-26 09:00',
    })
    const done: readonly Line[] = [...entries, ['2026-11-28 20:00', FILTERED], ['2026-11-29 20:00', BOTTLED]]
    expect(seen(diary(done), '2026-12-01 20:00')).toMatchObject({ today: [], next: 'ready 2026-12-26 09:00' })
    expect(seen(diary(done), '2026-12-26 07:00')).toEqual({
      today: ['ready 2026-12-26 due'],
      next: null,
      days: '56 of 56',
    })
    const opened = diary([...done, ['2026-12-26 20:00', { kind: 'opened' }]])
    expect(seen(opened, '2026-12-27 07:00')).toEqual({ today: [], next: null, days: '57 of 56' })
  })
})

it('stays away until the day it was put off to, but a pause hides nothing', () => {
  const entries = diary([START, ['2026-11-22 18:00', putOff('2026-11-26')]])
  expect(seen(entries, '2026-11-24 12:00')).toMatchObject({ today: [] })
  expect(seen(entries, '2026-11-24 12:00').next).toMatch(/ 2026-11-26 09:00$/)
  expect(seen(entries, '2026-11-26 07:00').today[0]).toBe('strain 2026-11-22 2026-12-06 due')
  const paused = settings({ pausedUntil: '2026-12-20' })
  expect(seen(diary([START]), '2026-11-24 12:00', paused).today[0]).toBe('strain 2026-11-22 2026-12-06 due')
})

it('asks for nothing after an end, and stops counting there', () => {
  const ended = diary([START, ['2026-11-10 18:00', { kind: 'discarded' }]])
  expect(seen(ended, '2027-11-24 12:00')).toEqual({ today: [], next: null, days: '10 of null' })
  const undone = diary([START, ['2026-11-10 18:00', { kind: 'undone', of: 1 }]])
  expect(seen(undone, '2026-11-24 12:00')).toEqual({ today: [], next: null, days: '1 of null' })
})

it('never asks today for what begins later, nor names as next what is asked already or past', () => {
  fc.assert(
    fc.property(lives, fc.integer({ min: 0, max: 40 * 24 }), (life, hours) => {
      const { fromMs, entries, wanted } = life.at(-1)!
      const nowMs = fromMs + hours * 3_600_000
      const now = isoDay(dayAt(wanted.zone, nowMs))
      const { today, next, day, ofDays } = agenda(entries, wanted, nowMs)
      const kinds = today.map(({ kind }) => kind)
      expect(new Set(kinds).size).toBe(kinds.length)
      for (const { sinceDay, state } of today) {
        expect(sinceDay <= now || wanted.zone !== entries[0]!.zone).toBe(true)
        expect(state).not.toBe('coming')
      }
      if (next !== null) {
        expect(next.dueMs).toBeGreaterThan(nowMs)
        expect(kinds).not.toContain(next.kind)
      }
      expect(agenda(entries, { ...wanted, pausedUntil: null }, nowMs)).toEqual(agenda(entries, wanted, nowMs))
      expect(Number.isInteger(day) && day >= 1).toBe(true)
      expect(ofDays === null || (Number.isInteger(ofDays) && ofDays >= 1)).toBe(true)
    }),
    { seed: SEED, numRuns: runs(200, 5000) },
  )
})
