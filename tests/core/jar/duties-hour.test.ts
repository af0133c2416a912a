import { describe, expect, it } from 'vitest'
import { agenda } from '../../../core/jar/tasks/agenda.ts'
import { at, diary, keys, type Line, peel, putOff, SHAKEN, said, settings, TASTED } from './diary.ts'

const START: Line = ['2026-11-01 10:00', peel()]

describe('put off to an hour', () => {
  const until = (when: string) => putOff(when.slice(0, 10), at(when))

  it('is said again at it, under another key, and goes on the next day', () => {
    const entries = diary([START, ['2026-11-05 09:30', until('2026-11-05 18:00')]])
    expect(said(entries, 'shake').slice(0, 3)).toEqual(['2026-11-05 18:00', '2026-11-06 09:00', '2026-11-07 09:00'])
    expect(keys(entries).slice(0, 2)).toEqual(['shake.2026-11-05.2', 'shake.2026-11-06'])
    const before = keys(diary([START]))
    expect(before).toContain('shake.2026-11-05')
  })

  it('has a key of its own each time', () => {
    const twice = diary([
      START,
      ['2026-11-05 09:30', until('2026-11-05 12:30')],
      ['2026-11-05 12:40', until('2026-11-05 18:00')],
    ])
    expect(keys(twice)[0]).toBe('shake.2026-11-05.3')
    expect(said(twice, 'shake')[0]).toBe('2026-11-05 18:00')
  })

  it('is over once it was answered, or where the hour had passed already', () => {
    const shaken = diary([START, ['2026-11-05 09:30', until('2026-11-05 18:00')], ['2026-11-05 12:00', SHAKEN]])
    expect(said(shaken, 'shake')[0]).toBe('2026-11-06 09:00')
    const past = diary([START, ['2026-11-05 19:30', until('2026-11-05 18:00')]])
    expect(said(past, 'shake')[0]).toBe('2026-11-06 09:00')
  })

  it('stays when something else is done meanwhile, and not when that comes after the hour', () => {
    const tasted = diary([START, ['2026-11-05 09:30', until('2026-11-05 18:00')], ['2026-11-05 12:00', TASTED]])
    expect(said(tasted, 'shake')[0]).toBe('2026-11-05 18:00')
    const later = diary([START, ['2026-11-05 09:30', until('2026-11-05 18:00')], ['2026-11-05 19:00', TASTED]])
    expect(said(later, 'shake')[0]).toBe('2026-11-06 09:00')
  })

  it('asks for straining again on a day between its reminders', () => {
    const entries = diary([START, ['2026-11-24 10:00', until('2026-11-24 18:00')]])
    expect(said(entries, 'strain').slice(0, 2)).toEqual(['2026-11-24 18:00', '2026-12-04 09:00'])
  })

  it('says at it what could be done already on the day of entry', () => {
    const basil = peel({ tasteFrom: '2026-11-02', strainFrom: '2026-11-03', strainBy: '2026-11-05' })
    const late: Line = ['2026-11-01 10:00', basil, '2026-11-03 15:30']
    const entries = diary([late, ['2026-11-03 15:40', until('2026-11-03 18:40')]])
    for (const kind of ['strain', 'taste', 'shake'] as const) {
      expect(said(entries, kind).slice(0, 2)).toEqual(['2026-11-03 18:40', '2026-11-04 09:00'])
    }
    const tasted = diary([late, ['2026-11-03 15:35', TASTED], ['2026-11-03 15:40', until('2026-11-03 18:40')]])
    expect(said(tasted, 'taste')).toEqual(['2026-11-04 09:00', '2026-11-05 09:00'])
  })

  it('over midnight takes the morning with it', () => {
    const entries = diary([START, ['2026-11-05 23:00', until('2026-11-06 02:00')]])
    expect(said(entries, 'shake').slice(0, 2)).toEqual(['2026-11-06 02:00', '2026-11-07 09:00'])
  })

  it('is not asked for meanwhile', () => {
    const entries = diary([START, ['2026-11-05 09:30', until('2026-11-05 18:00')]])
    const asked = (when: string) => agenda(entries, settings(), at(when)).today.map(({ kind }) => kind)
    expect(asked('2026-11-05 17:59')).toEqual([])
    expect(asked('2026-11-05 18:00')).toEqual(['shake'])
  })
})
