import { expect, it } from 'vitest'
import type { Happening } from '../../../core/jar/entry/entry.ts'
import { abvPercentIn, contentsOf } from '../../../core/jar/state/contents.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { agenda } from '../../../core/jar/tasks/agenda.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { at, BOTTLED, days, diary, type Line, peel, putOff, settings } from './diary.ts'
import { started, strained, strength, sweetened } from './jars.ts'

const out = (use: 'given' | 'opened', count: number): Happening => ({
  kind: 'bottles_out',
  use,
  bottles: [{ count, volumeMl: 500 }],
})

/** Lemon peel bottled on 1 December 2026: at its best for twelve months, so until 1 December 2027. */
const bottled: readonly Line[] = [
  ['2026-11-01 10:00', peel()],
  ['2026-11-25 10:00', strained()],
  ['2026-11-25 18:00', sweetened(800, 400)],
  ['2026-12-01 10:00', BOTTLED],
]

const drinkOn = (...more: readonly Line[]) => days(diary([...bottled, ...more]), 'drink')

// Four weeks before: judgement.
it('speaks once, four weeks before what is left is past its best', () => {
  expect(drinkOn()).toEqual(['2027-11-03'])
  expect(drinkOn(['2027-01-06 18:00', out('given', 1)], ['2027-02-06 18:00', out('opened', 1)])).toEqual(['2027-11-03'])
})

it('says nothing once every bottle is gone, the jar is empty, or the bottling was taken back', () => {
  expect(drinkOn(['2027-01-06 18:00', out('given', 3)])).toEqual([])
  expect(drinkOn(['2027-01-06 18:00', out('given', 2)], ['2027-03-01 18:00', out('opened', 1)])).toEqual([])
  expect(drinkOn(['2027-01-06 18:00', { kind: 'emptied' }])).toEqual([])
  expect(drinkOn(['2027-01-06 18:00', { kind: 'undone', of: 4 }])).toEqual([])
})

it('comes back where the last bottle was given away by mistake', () => {
  expect(drinkOn(['2027-01-06 18:00', out('given', 3)], ['2027-01-06 18:05', { kind: 'undone', of: 5 }])).toEqual([
    '2027-11-03',
  ])
})

it('is switched off by its setting, and only waits where the jar is put off', () => {
  const entries = diary(bottled)
  expect(days(entries, 'drink', settings({ drink: 'off' }))).toEqual([])
  expect(days(entries, 'drink', settings({ drink: 'on' }))).toEqual(['2027-11-03'])
  expect(drinkOn(['2027-11-01 10:00', putOff('2027-11-10')])).toEqual(['2027-11-10'])
})

it('says nothing of what was past its best when it became known', () => {
  const late: readonly Line[] = bottled.map(([when, what]) => [when, what, '2028-01-10 10:00'])
  expect(days(diary(late), 'drink')).toEqual([])
})

// 3 l of water in it: some 14 % vol, which film yeast can live in.
it('says nothing of what may not keep so long', () => {
  const weak: readonly Line[] = bottled.map(([when, what]) =>
    what.kind === 'sweetened' ? [when, sweetened(5000, 100)] : [when, what],
  )
  expect(abvPercentIn(jarStateOf(diary(weak))!)).toBeLessThan(15)
  expect(days(diary(weak), 'drink')).toEqual([])
})

it('knows the strength with no ± as with it', () => {
  const stories = bottled.map((_, index) => jarStateOf(diary(bottled.slice(0, index + 1)))!)
  const gauged: Line = [
    '2026-11-30 10:00',
    { kind: 'strained', measured: null, strength: strength(87), rinseWaterG: exactly(0) },
  ]
  const read = jarStateOf(diary([bottled[0]!, gauged]))!
  const known = {
    method: 'two_instruments',
    abvPercent: { value: 31, plusMinus: 0.2 },
    sugarGPerL: exactly(200),
  } as const
  const gravity = jarStateOf(diary([...bottled, ['2026-12-02 10:00', { kind: 'measured', ...known }]]))!
  expect(abvPercentIn(gravity)).toBe(31)
  for (const story of [...stories, read, gravity]) {
    expect(abvPercentIn(story)).toBe(contentsOf(story).outcome.abvPercent.value)
  }
  expect(abvPercentIn(jarStateOf(diary([['2026-11-01 10:00', started({ spirits: [], plants: [] })]]))!)).toBeNull()
})

it('is no job of the jar’s', () => {
  const kinds = ({ today, coming }: ReturnType<typeof agenda>) => [...today, ...coming].map(({ kind }) => kind)
  for (const when of ['2027-05-01 12:00', '2027-11-10 12:00']) {
    expect(kinds(agenda(diary(bottled), settings(), at(when)))).toEqual(['ready'])
  }
})
