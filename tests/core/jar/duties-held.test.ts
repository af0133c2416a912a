import { describe, expect, it } from 'vitest'
import { allDuties } from '../../../core/jar/tasks/duties.ts'
import {
  at,
  BOTTLED,
  days,
  diary,
  keys,
  peel,
  putOff,
  SHAKEN,
  START,
  STRAINED,
  SWEETENED,
  said,
  settings,
  shown,
  TASTED,
} from './diary.ts'
import { strained, sweetened } from './jars.ts'

describe('put off', () => {
  it('says it once where it would have come on that day anyway', () => {
    const entries = diary([START, ['2026-11-05 18:00', putOff('2026-12-04')]])
    expect(days(entries, 'strain').slice(0, 2)).toEqual(['2026-12-04', '2026-12-11'])
  })

  it('says on the day what would have come, once a kind, and counts shakes anew from it', () => {
    const entries = diary([START, ['2026-11-05 18:00', putOff('2026-11-24')]])
    expect(keys(entries).slice(0, 3).sort()).toEqual(['shake.2026-11-24', 'strain.2026-11-24', 'taste.2026-11-24'])
    expect(days(entries, 'shake')).toHaveLength(7)
    expect(days(entries, 'shake').slice(0, 2)).toEqual(['2026-11-24', '2026-11-25'])
    expect(days(entries, 'strain')).toEqual(['2026-11-24', '2026-12-04', '2026-12-11', '2026-12-18', '2026-12-25'])
  })

  it('leaves alone what comes later', () => {
    const entries = diary([START, ['2026-11-05 18:00', putOff('2026-11-10')]])
    expect(days(entries, 'taste')).toEqual(['2026-11-11'])
    expect(days(entries, 'strain')[0]).toBe('2026-11-22')
  })

  it('asks again for what was asked already', () => {
    const entries = diary([START, ['2026-11-22 10:00', putOff('2026-11-26')]])
    expect(days(entries, 'strain').slice(0, 2)).toEqual(['2026-11-26', '2026-12-04'])
  })

  it('holds for what follows: a shake, straining, and the rest', () => {
    const shaken = diary([START, ['2026-11-05 18:00', putOff('2026-11-10')], ['2026-11-06 18:00', SHAKEN]])
    expect(days(shaken, 'shake').slice(0, 2)).toEqual(['2026-11-10', '2026-11-11'])
    const strainedMeanwhile = diary([START, ['2026-11-23 18:00', putOff('2026-12-05')], STRAINED])
    expect(days(strainedMeanwhile, 'sweeten')).toEqual(['2026-12-05', '2026-12-10'])
  })

  it('makes readiness wait and never says it twice', () => {
    const entries = diary([
      START,
      STRAINED,
      SWEETENED,
      ['2026-11-27 18:00', BOTTLED],
      ['2026-12-20 18:00', putOff('2027-01-07')],
    ])
    expect(keys(entries)).toEqual(['ready.2026-12-26', 'drink.2027-10-30'])
    expect(said(entries, 'ready')).toEqual(['2027-01-07 09:00'])
  })

  it('begins the shakes on its day though the jar was answered on the day before', () => {
    const rhythm = settings({ shake: 'every_other_day' })
    const entries = diary([START, ['2026-11-05 18:00', putOff('2026-11-10')], ['2026-11-09 18:00', TASTED]])
    expect(days(entries, 'shake', rhythm).slice(0, 2)).toEqual(['2026-11-10', '2026-11-12'])
    const onItsDay = diary([START, ['2026-11-05 18:00', putOff('2026-11-10')], ['2026-11-10 18:00', TASTED]])
    expect(days(onItsDay, 'shake', rhythm)[0]).toBe('2026-11-12')
  })

  it('is over once an answer came after its day, and nothing where its day was no later', () => {
    const over = diary([START, ['2026-11-05 18:00', putOff('2026-11-10')], ['2026-11-12 18:00', SHAKEN]])
    expect(days(over, 'shake')[0]).toBe('2026-11-13')
    const none = diary([START, ['2026-11-05 18:00', putOff('2026-11-05')]])
    expect(days(none, 'shake')[0]).toBe('2026-11-06')
    const past = diary([START, ['2026-11-24 18:00', putOff('2026-11-23')]])
    expect(days(past, 'strain')[0]).toBe('2026-11-22')
  })

  it('moves an hour to the morning of its day, and never before the hour', () => {
    const hours = peel({ isHours: true, steepHours: { min: 30, max: 30 } })
    const until = (day: string) =>
      diary([
        ['2026-11-01 10:00', hours],
        ['2026-11-01 12:00', putOff(day)],
      ])
    expect(said(until('2026-11-05'), 'strain')[0]).toBe('2026-11-05 09:00')
    expect(said(until('2026-11-02'), 'strain')[0]).toBe('2026-11-02 16:00')
  })
})

describe('a pause', () => {
  const paused = settings({ pausedUntil: '2026-11-24' })

  it('says at its end the last of each kind under its own key', () => {
    const entries = diary([START])
    const first = allDuties(entries, paused).filter(({ dueMs }) => dueMs <= at('2026-11-24 09:00'))
    expect(first.map(({ key }) => key).sort()).toEqual(['shake.2026-11-24', 'strain.2026-11-22', 'taste.2026-11-11'])
    expect(new Set(first.map(({ dueMs }) => shown(dueMs)))).toEqual(new Set(['2026-11-24 09:00']))
  })

  it('makes one shake of those missed and counts the unanswered from its end', () => {
    expect(days(diary([START]), 'shake', paused)).toHaveLength(7)
    expect(days(diary([START]), 'shake', paused).slice(0, 2)).toEqual(['2026-11-24', '2026-11-25'])
  })

  it('does not say again what was said before it began', () => {
    const weekly = diary([START, ['2026-12-05 18:00', SHAKEN]])
    expect(days(weekly, 'shake')[0]).toBe('2026-12-12')
    const keysPaused = keys(weekly, settings({ pausedUntil: '2026-12-15' }))
    expect(keysPaused.filter((key) => key.startsWith('shake')).slice(0, 2)).toEqual([
      'shake.2026-12-12',
      'shake.2026-12-19',
    ])
  })

  it('says only the last of what came before it, though none of it was said', () => {
    const basil = peel({ tasteFrom: '2026-11-06', strainFrom: '2026-11-08', strainBy: '2026-11-11' })
    const entries = diary([['2026-11-01 10:00', basil]])
    expect(said(entries, 'taste', settings({ pausedUntil: '2026-11-09' }))).toEqual([
      '2026-11-09 09:00',
      '2026-11-10 09:00',
      '2026-11-11 09:00',
    ])
  })

  it('asks for no taste once it ends after the last day for straining', () => {
    expect(days(diary([START]), 'taste', settings({ pausedUntil: '2026-12-06' }))).toEqual(['2026-12-06'])
    expect(days(diary([START]), 'taste', settings({ pausedUntil: '2026-12-07' }))).toEqual([])
    expect(days(diary([START, ['2026-11-05 18:00', putOff('2026-12-07')]]), 'taste')).toEqual([])
  })

  it('changes nothing later than it', () => {
    const entries = diary([START, ['2026-11-30 18:00', SHAKEN]])
    expect(days(entries, 'shake', paused)).toEqual(days(entries, 'shake'))
  })

  it('holds an hour', () => {
    const hours = peel({ isHours: true, steepHours: { min: 20, max: 20 } })
    const wanted = settings({ pausedUntil: '2026-11-02' })
    expect(said(diary([['2026-11-01 10:00', hours]]), 'strain', wanted)[0]).toBe('2026-11-02 09:00')
  })
})

describe('entered late', () => {
  it('says nothing about the past: walnuts begun two months ago', () => {
    const walnuts = peel({ tasteFrom: '2026-07-20', strainFrom: '2026-08-03', strainBy: '2026-08-20' })
    const entries = diary([['2026-06-24 12:00', walnuts, '2026-11-01 20:00']])
    expect(days(entries, 'taste')).toEqual([])
    expect(days(entries, 'strain')).toEqual(['2026-11-02'])
    expect(keys(entries)[0]).toBe('shake.2026-11-02')
  })

  it('asks the next morning for all that could be done when it was entered', () => {
    const entries = diary([['2026-11-01 10:00', peel(), '2026-11-13 20:00']])
    expect(days(entries, 'taste')).toEqual(['2026-11-14'])
    expect(days(entries, 'shake').slice(0, 2)).toEqual(['2026-11-14', '2026-11-15'])
    expect(days(diary([['2026-11-01 10:00', peel(), '2026-12-05 20:00']]), 'taste')).toEqual(['2026-12-06'])
    expect(days(diary([['2026-11-01 10:00', peel(), '2026-12-06 20:00']]), 'taste')).toEqual([])
    const tasted = diary([
      ['2026-11-01 10:00', peel(), '2026-11-13 20:00'],
      ['2026-11-13 21:00', TASTED],
    ])
    expect(days(tasted, 'taste')).toEqual([])
    const old = diary([['2026-06-24 12:00', peel(), '2026-11-01 20:00']])
    expect(days(old, 'shake').slice(0, 3)).toEqual(['2026-11-02', '2026-11-09', '2026-11-16'])
  })

  it('asks the next morning for straining where the window is open, and keeps what is still to come', () => {
    const entries = diary([['2026-11-01 10:00', peel(), '2026-11-28 20:00']])
    expect(days(entries, 'strain')).toEqual(['2026-11-29', '2026-12-04', '2026-12-11', '2026-12-18', '2026-12-25'])
  })

  it('asks for straining before a short window closes, or the morning after it has', () => {
    const basil = peel({ tasteFrom: '2026-11-02', strainFrom: '2026-11-03', strainBy: '2026-11-05' })
    const entered = (when: string) => days(diary([['2026-11-01 15:30', basil, when]]), 'strain')
    expect(entered('2026-11-02 15:30')).toEqual(['2026-11-03', '2026-11-05', '2026-11-12', '2026-11-19', '2026-11-26'])
    expect(entered('2026-11-03 15:30')).toEqual(['2026-11-04', '2026-11-05', '2026-11-12', '2026-11-19', '2026-11-26'])
    expect(entered('2026-11-04 15:30')[0]).toBe('2026-11-05')
    expect(entered('2026-11-05 15:30')[0]).toBe('2026-11-06')
    expect(entered('2026-11-09 15:30')).toEqual(['2026-11-10', '2026-11-19', '2026-11-26'])
  })

  it('counts what follows straining and syrup from the day they were entered', () => {
    expect(days(diary([START, ['2026-11-25 18:00', strained(), '2026-12-10 20:00']]), 'sweeten')[0]).toBe('2026-12-11')
    const late = diary([START, STRAINED, ['2026-11-26 18:00', sweetened(800, 400), '2027-02-01 20:00']])
    expect(keys(late)).toEqual(['bottle.2027-02-04'])
  })

  it('falls due no earlier than it was entered, wherever its maker has moved to', () => {
    const entries = diary([['2026-11-01 23:30', peel()]], 'Pacific/Honolulu')
    const [first] = allDuties(entries, settings({ zone: 'Pacific/Kiritimati', atMinutes: 0 }))
    expect(first!.key).toBe('shake.2026-11-02')
    expect(first!.dueMs).toBe(at('2026-11-01 23:30', 'Pacific/Honolulu'))
  })
})
