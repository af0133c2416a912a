import { describe, expect, it } from 'vitest'
import { allDuties, duties } from '../../../core/jar/tasks/duties.ts'
import { at, days, diary, keys, peel, SHAKEN, said, settings, TASTED } from './diary.ts'

const START = ['2026-11-01 10:00', peel()] as const

describe('shake', () => {
  const NEXT_SEVEN = ['02', '03', '04', '05', '06', '07', '08'].map((day) => `2026-11-${day}`)

  it('comes every morning, seven times, and says which is the last', () => {
    const entries = diary([START])
    expect(days(entries, 'shake')).toEqual(NEXT_SEVEN)
    const shakes = allDuties(entries, settings()).filter(({ kind }) => kind === 'shake')
    expect(shakes.map(({ isLast }) => isLast)).toEqual([false, false, false, false, false, false, true])
    expect(shakes[0]).toMatchObject({ key: 'shake.2026-11-02', day: '2026-11-02', by: null })
  })

  it('resumes at the next answer, whatever it is', () => {
    const entries = diary([START, ['2026-11-15 18:00', TASTED]])
    expect(days(entries, 'shake')[0]).toBe('2026-11-16')
    expect(days(entries, 'shake')).toHaveLength(7)
  })

  it('is silent on a day on which the jar was shaken before it', () => {
    expect(days(diary([START, ['2026-11-05 07:00', SHAKEN]]), 'shake')[0]).toBe('2026-11-06')
  })

  it('keeps its rhythm from the last shake, not from other answers', () => {
    const entries = diary([START, ['2026-11-05 18:00', SHAKEN], ['2026-11-08 18:00', TASTED]])
    expect(days(entries, 'shake', settings({ shake: 'every_other_day' })).slice(0, 2)).toEqual([
      '2026-11-09',
      '2026-11-11',
    ])
  })

  it('is weekly once the jar is older than thirty days', () => {
    const entries = diary([START, ['2026-11-28 18:00', SHAKEN]])
    expect(days(entries, 'shake').slice(0, 5)).toEqual([
      '2026-11-29',
      '2026-11-30',
      '2026-12-01',
      '2026-12-08',
      '2026-12-15',
    ])
    expect(days(entries, 'shake', settings({ shake: 'every_other_day' })).slice(0, 2)).toEqual([
      '2026-11-30',
      '2026-12-07',
    ])
  })

  it('finds its week again after years', () => {
    const entries = diary([START, ['2028-11-01 18:00', TASTED]])
    const [first] = days(entries, 'shake')
    expect((at(`${first} 09:00`) - at('2026-12-01 09:00')) % (7 * 86_400_000)).toBe(0)
    expect(first! > '2028-11-01' && first! <= '2028-11-08').toBe(true)
  })

  it('does not come when it is off, nor for plants that are done within hours', () => {
    expect(days(diary([START]), 'shake', settings({ shake: 'off' }))).toEqual([])
    const hours = peel({ isHours: true, steepHours: { min: 4, max: 8 } })
    expect(days(diary([['2026-11-01 10:00', hours]]), 'shake')).toEqual([])
  })
})

describe('taste', () => {
  it('comes once, unless it was tasted that day or since', () => {
    expect(days(diary([START]), 'taste')).toEqual(['2026-11-11'])
    expect(days(diary([START, ['2026-11-10 18:00', TASTED]]), 'taste')).toEqual(['2026-11-11'])
    expect(days(diary([START, ['2026-11-11 07:00', TASTED]]), 'taste')).toEqual([])
    expect(days(diary([START, ['2026-11-14 18:00', TASTED]]), 'taste')).toEqual([])
  })

  it('comes daily where the whole window lies within ten days', () => {
    const basil = peel({ tasteFrom: '2026-11-06', strainFrom: '2026-11-08', strainBy: '2026-11-11' })
    const window = ['06', '07', '08', '09', '10', '11'].map((day) => `2026-11-${day}`)
    expect(days(diary([['2026-11-01 10:00', basil]]), 'taste')).toEqual(window)
    const entries = diary([
      ['2026-11-01 10:00', basil],
      ['2026-11-09 07:00', TASTED],
    ])
    expect(days(entries, 'taste')).toEqual(['2026-11-10', '2026-11-11'])
  })
})

describe('strain', () => {
  const strainsOf = (plan: Parameters<typeof peel>[0]) => days(diary([['2026-11-01 10:00', peel(plan)]]), 'strain')

  it('comes when the window opens, two days before it closes, then weekly three times', () => {
    expect(days(diary([START]), 'strain')).toEqual([
      '2026-11-22',
      '2026-12-04',
      '2026-12-11',
      '2026-12-18',
      '2026-12-25',
    ])
    expect(allDuties(diary([START]), settings()).find(({ kind }) => kind === 'strain')?.by).toBe('2026-12-06')
  })

  it('comes on the last day instead where the window is shorter than four days', () => {
    const firstTwo = (strainFrom: string, strainBy: string) => strainsOf({ strainFrom, strainBy }).slice(0, 2)
    expect(firstTwo('2026-11-19', '2026-11-21')).toEqual(['2026-11-19', '2026-11-21'])
    expect(firstTwo('2026-11-19', '2026-11-20')).toEqual(['2026-11-19', '2026-11-20'])
    expect(firstTwo('2026-11-19', '2026-11-22')).toEqual(['2026-11-19', '2026-11-20'])
    expect(strainsOf({ strainFrom: '2026-11-21', strainBy: '2026-11-21' })).toEqual([
      '2026-11-21',
      '2026-11-28',
      '2026-12-05',
      '2026-12-12',
    ])
  })

  it('is sensible where an end is not known, or both are one day', () => {
    expect(strainsOf({ strainFrom: '2026-12-06' })).toEqual(['2026-12-06', '2026-12-13', '2026-12-20', '2026-12-27'])
    expect(strainsOf({ strainFrom: null })).toEqual(['2026-12-04', '2026-12-11', '2026-12-18', '2026-12-25'])
    expect(strainsOf({ strainBy: null })).toEqual(['2026-11-22', '2026-11-29', '2026-12-06', '2026-12-13'])
    expect(strainsOf({ strainFrom: '2026-11-02', strainBy: '2026-11-03' })[0]).toBe('2026-11-02')
    expect(strainsOf({ strainFrom: null, strainBy: '2026-11-02' })[0]).toBe('2026-11-02')
    expect(strainsOf({ strainFrom: null, strainBy: null })).toEqual([])
  })
})

describe('done within hours', () => {
  const plan = {
    tasteFrom: '2026-11-01',
    strainFrom: '2026-11-01',
    strainBy: '2026-11-01',
    isHours: true,
    steepHours: { min: 6, max: 20 },
  }

  it('is tasted and strained at the hour, night or day', () => {
    const entries = diary([['2026-11-01 10:00', peel(plan)]])
    expect(said(entries, 'taste')).toEqual(['2026-11-01 16:00'])
    expect(said(entries, 'strain')).toEqual([
      '2026-11-02 06:00',
      '2026-11-09 09:00',
      '2026-11-16 09:00',
      '2026-11-23 09:00',
    ])
    expect(
      said(
        diary([
          ['2026-11-01 10:00', peel(plan)],
          ['2026-11-01 17:00', TASTED],
        ]),
        'taste',
      ),
    ).toEqual([])
  })

  it('is only strained where there is one hour', () => {
    const entries = diary([['2026-11-01 10:00', peel({ ...plan, steepHours: { min: 6, max: 6 } })]])
    expect(keys(entries).slice(0, 1)).toEqual(['strain.2026-11-01'])
    expect(said(entries, 'taste')).toEqual([])
  })

  it('is strained the next morning where it was entered after the hour', () => {
    const entries = diary([['2026-11-01 10:00', peel(plan), '2026-11-05 20:00']])
    expect(said(entries, 'strain').slice(0, 2)).toEqual(['2026-11-06 09:00', '2026-11-09 09:00'])
    expect(said(entries, 'taste')).toEqual([])
  })
})

it('counts what is due by now', () => {
  const entries = diary([START])
  expect(duties(entries, settings(), at('2026-11-03 08:59')).map(({ key }) => key)).toEqual(['shake.2026-11-02'])
  expect(duties(entries, settings(), at('2026-11-03 09:00'))).toHaveLength(2)
})
