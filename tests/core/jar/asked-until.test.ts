import { describe, expect, it } from 'vitest'
import type { Happening } from '../../../core/jar/entry/entry.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { expectFree, MOST_RUNNING, runningJars } from '../../../core/jar/state/running-jars.ts'
import { MOST_SHARES, madeOf, newShareId, withRoomForShare } from '../../../core/jar/state/shares.ts'
import { asksStill, asksUntil } from '../../../core/jar/tasks/asks-until.ts'
import { isLongPause } from '../../../core/jar/tasks/duty.ts'
import { isOverPutOff, putOffOf } from '../../../core/jar/tasks/put-off.ts'
import { dayNumber } from '../../../core/quantity/time/day-number.ts'
import { refusal } from '../quantity/refusal.ts'
import { at, BOTTLED, diary, peel, putOff, settings } from './diary.ts'
import { entriesOf, started, storyFrom, strained } from './jars.ts'

const OPENED = { kind: 'opened' } as const

describe('what is put off', () => {
  it('holds until its day or its hour has come, the last one only', () => {
    const entries = diary([
      ['2026-11-01 10:00', peel()],
      ['2026-11-02 10:00', putOff('2026-11-05')],
      ['2026-11-03 10:00', putOff('2026-11-06')],
      ['2026-11-03 11:00', putOff('2026-11-06', at('2026-11-06 18:00'))],
    ])
    const happened = entries.slice(0, 3) as Parameters<typeof isOverPutOff>[1]
    const [first, day, hour] = [entries[1], entries[2], entries[3]] as unknown as Parameters<typeof isOverPutOff>[0][]
    const now = (when: string) => ({ today: when.slice(0, 10), nowMs: at(when) })
    expect(isOverPutOff(first!, happened, now('2026-11-03 12:00'))).toBe(true)
    expect(isOverPutOff(day!, happened, now('2026-11-05 23:59'))).toBe(false)
    expect(isOverPutOff(day!, happened, now('2026-11-06 00:00'))).toBe(true)
    expect(isOverPutOff(hour!, [...happened, hour!], now('2026-11-06 17:59'))).toBe(false)
    expect(isOverPutOff(hour!, [...happened, hour!], now('2026-11-06 18:00'))).toBe(true)
    expect(isOverPutOff(happened[0]!, happened, now('2026-11-06 18:00'))).toBe(false)
  })

  it('is put off to a later day or hour than that on which it was said', () => {
    const said = (untilDay: string, untilMs: number | null = null) =>
      putOffOf(
        jarStateOf(
          diary([
            ['2026-11-01 10:00', peel()],
            ['2026-11-05 18:00', putOff(untilDay, untilMs)],
          ]),
        )!,
      )
    expect(said('2026-11-04')).toBeNull()
    expect(said('2026-11-05')).toBeNull()
    expect(said('2026-11-06')).toEqual({ untilDay: dayNumber('2026-11-06'), untilMs: null, seq: 2 })
    expect(said('2026-11-05', at('2026-11-05 18:00'))).toBeNull()
    expect(said('2026-11-05', at('2026-11-05 18:01'))).toMatchObject({ untilMs: at('2026-11-05 18:01') })
  })

  it('is what a jar asks before then', () => {
    const entries = diary([['2026-11-01 10:00', peel()]])
    const until = (untilDay: string, untilMs: number | null = null) =>
      asksUntil(entries, { untilDay, untilMs }, settings({ shake: 'off' }), at('2026-11-02 12:00'))
    // It is worth tasting from the 11th on, and said at nine.
    expect(until('2026-11-11')).toBe(false)
    expect(until('2026-11-12')).toBe(true)
    expect(until('2026-11-11', at('2026-11-11 09:00'))).toBe(false)
    expect(until('2026-11-11', at('2026-11-11 09:01'))).toBe(true)
    expect(asksStill(storyFrom(started(), strained(), OPENED))).toBe(true)
    expect(asksStill(storyFrom(started(), strained(), BOTTLED))).toBe(true)
    expect(asksStill(storyFrom(started(), strained(), BOTTLED, OPENED))).toBe(false)
  })

  // A quarter of a year; common practice, no source.
  it.each([
    [91, false],
    [92, false],
    [93, true],
  ])('for %s days is a long pause: %s', (days, isLong) => {
    expect(isLongPause(days)).toBe(isLong)
  })
})

describe('jars and shares are bounded', () => {
  it('a running jar keeps its name, one that has ended gives it back', () => {
    const jar = (id: string, ...more: readonly Happening[]) => ({ id, entries: entriesOf(started(), ...more) })
    const jars = [jar('aaaa1'), jar('aaaa2', strained(), { kind: 'emptied' }), jar('aaaa3', { kind: 'discarded' })]
    expect(runningJars(jars).map(({ jar: { id } }) => id)).toEqual(['aaaa1'])
    expect(refusal(() => expectFree('Lemon', jars))).toContain('jar_name_taken')
    expect(() => expectFree('lemon', jars.slice(1))).not.toThrow()
    expect(MOST_RUNNING).toBe(100)
  })

  it('a hundred shares, of which the oldest that is withdrawn gives way', () => {
    const share = (jarId: string, withdrawn = false) => ({ jarId, withdrawn, made: 1 })
    const shares = Array.from({ length: MOST_SHARES }, (_, index) => share(`${index}`))
    expect(MOST_SHARES).toBe(100)
    expect(withRoomForShare(shares.slice(1))).toHaveLength(99)
    expect(refusal(() => withRoomForShare(shares))).toContain('too_many_shares')
    const some = shares.with(3, share('3', true)).with(5, share('5', true))
    expect(withRoomForShare(some).map(({ jarId }) => jarId)).toEqual(shares.toSpliced(3, 1).map(({ jarId }) => jarId))
    expect(madeOf('3', [share('3'), share('4'), share('3', true)])).toBe(2)
    const id = newShareId('seed', [])
    expect(id).toMatch(/^[0-9a-z]{8}$/)
    expect(newShareId('seed', [id])).not.toBe(id)
  })
})
