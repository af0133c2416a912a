import { describe, expect, it } from 'vitest'
import { jarStateOf, stageOf } from '../../../core/jar/state/jar-state.ts'
import { agenda } from '../../../core/jar/tasks/agenda.ts'
import { at, days, diary, type Line, peel, said, settings } from './diary.ts'
import { strained, sweetened } from './jars.ts'

const kindsAt = (lines: readonly Line[], ms: number) =>
  agenda(diary(lines), settings({ shake: 'off' }), ms).today.map(({ kind }) => kind)

describe('plants whose window ends within ten days of the start', () => {
  // Common practice, no source.
  it.each([
    ['2026-11-11', ['2026-11-08', '2026-11-09', '2026-11-10', '2026-11-11']],
    ['2026-11-12', ['2026-11-08']],
  ])('until %s are tasted on each day of it, others once', (strainBy, tasted) => {
    const plan = { tasteFrom: '2026-11-08', strainFrom: '2026-11-09', strainBy }
    expect(days(diary([['2026-11-01 10:00', peel(plan)]]), 'taste')).toEqual(tasted)
  })
})

describe('plants that are done within the day, from two hours on to four', () => {
  const hours = { isHours: true, steepHours: { min: 2, max: 4 }, strainBy: '2026-11-01' }
  const begun = (entered: string): Line => ['2026-11-01 10:00', peel(hours), entered]

  it('are tasted at the first hour where the jar is entered by then', () => {
    expect(said(diary([begun('2026-11-01 12:00')]), 'taste')).toEqual(['2026-11-01 12:00'])
    expect(said(diary([begun('2026-11-01 12:01')]), 'taste')).toEqual([])
  })

  it('are strained at the last hour where the jar is entered by then, else the next morning', () => {
    expect(said(diary([begun('2026-11-01 14:00')]), 'strain')[0]).toBe('2026-11-01 14:00')
    expect(said(diary([begun('2026-11-01 14:01')]), 'strain')[0]).toBe('2026-11-02 09:00')
  })

  it('can be tasted from the first hour to the last, ends included', () => {
    const lines = [begun('2026-11-01 10:00')]
    const [first, last] = [at('2026-11-01 12:00'), at('2026-11-01 14:00')]
    expect([first - 1, first, last, last + 1].map((ms) => kindsAt(lines, ms).includes('taste'))).toEqual([
      false,
      true,
      true,
      false,
    ])
  })

  it('are late to be strained only after the last hour', () => {
    const stateAt = (ms: number) => agenda(diary([begun('2026-11-01 10:00')]), settings(), ms).today[0]!.state
    expect(stateAt(at('2026-11-01 14:00'))).toBe('due')
    expect(stateAt(at('2026-11-01 14:00') + 1)).toBe('overdue')
  })
})

it('rests for 30 days where the plan tells none, and is ready on the day itself', () => {
  // Common practice, no source.
  const story = jarStateOf(
    diary([
      ['2026-11-01 10:00', peel({ restDays: null })],
      ['2026-11-25 10:00', strained()],
      ['2026-11-26 10:00', sweetened(800, 400)],
    ]),
  )!
  expect(story.readyOn).toBe('2026-12-26')
  expect(stageOf(story, '2026-12-25')).toBe('sweetened')
  expect(stageOf(story, '2026-12-26')).toBe('ready')
})
