import { describe, expect, it } from 'vitest'
import type { JarEntry } from '../../../core/jar/entry/entry.ts'
import { jarStateOf, stageOf } from '../../../core/jar/state/jar-state.ts'
import { agenda } from '../../../core/jar/tasks/agenda.ts'
import { at, diary, type Line, putOff, START, STRAINED, SWEETENED, seen, settings, shown } from './diary.ts'

describe('what comes next is the task, not its reminder', () => {
  const comingIn = (entries: readonly JarEntry[], when: string, wanted = settings()) =>
    agenda(entries, wanted, at(when)).coming.map(({ kind, sinceDay, byDay, dueMs }) =>
      [kind, sinceDay, byDay, shown(dueMs).slice(-5)].filter(Boolean).join(' '),
    )

  it('in a pause', () => {
    const paused = settings({ pausedUntil: '2026-12-20' })
    expect(seen(diary([START, STRAINED, SWEETENED]), '2026-11-26 20:00', paused).next).toBe('bottle 2026-11-29 09:00')
    const long = settings({ pausedUntil: '2027-02-01' })
    expect(comingIn(diary([START]), '2026-11-02 12:00', long)).toEqual([
      'taste 2026-11-11 09:00',
      'strain 2026-11-22 2026-12-06 09:00',
    ])
  })

  it('put off to an hour or a day, which it names, of everything that would have come by then', () => {
    const hour = diary([START, ['2026-12-07 09:30', putOff('2026-12-07', at('2026-12-07 12:30'))]])
    expect(seen(hour, '2026-12-07 12:00').today).toEqual([])
    expect(comingIn(hour, '2026-12-07 12:00')).toEqual(['strain 2026-12-07 2026-12-06 12:30', 'shake 2026-12-07 12:30'])
    expect(agenda(hour, settings(), at('2026-12-07 12:00')).next).toMatchObject({ kind: 'strain', atMinutes: 750 })
    expect(seen(hour, '2026-12-07 12:30').today[0]).toBe('strain 2026-11-22 2026-12-06 overdue')
    const day = diary([START, ['2026-11-05 18:00', putOff('2026-11-12')]])
    expect(comingIn(day, '2026-11-06 12:00')).toEqual([
      'taste 2026-11-12 09:00',
      'shake 2026-11-12 09:00',
      'strain 2026-11-22 2026-12-06 09:00',
    ])
  })

  it('put off before it was strained or sweetened: that was another task', () => {
    const later: Line = ['2026-11-25 10:00', putOff('2026-11-30')]
    expect(seen(diary([START, later, STRAINED]), '2026-11-26 12:00').today).toEqual(['sweeten 2026-11-25 due'])
    const after: Line = ['2026-11-26 10:00', putOff('2026-11-30')]
    expect(seen(diary([START, STRAINED, after]), '2026-11-26 12:00').next).toBe('sweeten 2026-11-30 09:00')
  })
})

it('tastes no more once the last day for straining has passed', () => {
  const kinds = (when: string) => agenda(diary([START]), settings(), at(when)).today.map(({ kind }) => kind)
  expect(kinds('2026-12-06 12:00')).toEqual(['strain', 'taste', 'shake'])
  expect(kinds('2026-12-07 12:00')).toEqual(['strain', 'shake'])
})

it('reaches its goal with the first glass, however early', () => {
  const opened = diary([START, STRAINED, SWEETENED, ['2026-12-03 20:00', { kind: 'opened' }]])
  expect(seen(opened, '2026-12-07 12:00').days).toBe('37 of 33')
  expect(stageOf(jarStateOf(opened)!, '2026-12-07')).toBe('ready')
  expect(stageOf(jarStateOf(opened.slice(0, 3))!, '2026-12-07')).toBe('sweetened')
})
