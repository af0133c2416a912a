import { describe, expect, it } from 'vitest'
import type { Started } from '../../core/jar/entry/entry.ts'
import { NOBODY } from '../../store/person.ts'
import { readStored } from '../../store/schema/read-stored.ts'
import { startedEntry } from './some-people.ts'

type Typed = readonly (readonly [string, string])[]

const MOMENT = { atMs: Date.UTC(2026, 10, 1, 12), day: '2026-11-01', zone: 'UTC', enteredMs: Date.UTC(2026, 10, 1, 12) }

const oldPlant = (id: string | null, massG: number, count: number | null = null) => ({
  id,
  name: id ?? 'tips',
  massG: { value: massG, plusMinus: 1 },
  count,
  addOn: null,
})

/** A start as version 3 kept it. */
const oldStart = (typed: Typed, more: object = {}) => {
  const { sweetenings: _, targets, days, bottles, named: _n, origin: _o, ...rest } = startedEntry('x') as Started
  return {
    ...rest,
    ...MOMENT,
    typed,
    sugarG: { value: 0, plusMinus: 0 },
    plan: { targets, ...days, bottles },
    plants: [oldPlant('ginger', 20), oldPlant('turmeric', 10)],
    ...more,
  }
}

const read = (entries: readonly object[], country: string | null = null) => {
  const settings = { ...NOBODY.settings, country }
  const text = JSON.stringify({
    ...NOBODY,
    version: 3,
    settings,
    jars: [{ id: 'k7f2a', entries, told: [], cautioned: [] }],
  })
  const stored = readStored(text)
  if (stored.kind !== 'person') throw new Error(JSON.stringify(stored))
  return stored.person.jars[0]!.entries
}
const startIn = (entries: ReturnType<typeof read>) => entries[0] as Started

describe('a start of version 3', () => {
  it('tells how its plants were named', () => {
    const { plants } = startIn(
      read([
        oldStart([['of', '20 g dried ginger + 2 sticks ceylon cinnamon + turmeric']], {
          plants: [oldPlant('ginger', 20), oldPlant('cinnamon_ceylon', 8, 2), oldPlant('turmeric', 30)],
        }),
      ]),
    )
    expect(plants).toMatchObject([
      { id: 'ginger', isDried: true, isUsual: false, words: { noun: 'dried ginger', isFormSaid: true, unit: null } },
      { isDried: false, words: { noun: 'ceylon cinnamon', isFormSaid: false, unit: 'stick' } },
      { id: 'turmeric', isDried: false, isUsual: true, words: { noun: 'turmeric', isFormSaid: false, unit: null } },
    ])
  })

  it('tells by the word alone that plants were dried where the text cannot be read any more', () => {
    const { plants } = startIn(read([oldStart([['of', '20 g dried ginger + oleander leaves']])]))
    expect(plants.map(({ isDried, words }) => [isDried, words])).toEqual([
      [true, null],
      [true, null],
    ])
  })

  it('tells what its maker named', () => {
    const named = [
      ['of', 'ginger'],
      ['spirit', '1 l 95%'],
      ['to-strength', '28%'],
      ['steep-at', '60%'],
      ['ready-by', '6/7/2027'],
      ['days', '2 months'],
    ] as const
    expect(startIn(read([oldStart(named)], 'US')).named).toEqual({
      isStrengthNamed: true,
      isSweetnessNamed: false,
      areBottlesNamed: false,
      isSpiritNamed: true,
      steepAtPercent: 60,
      readyBy: '2027-06-07',
      steepFor: { days: null, months: 2, nominalDays: 60.87375 },
    })
    expect(startIn(read([oldStart(named)], 'IT')).named.readyBy).toBe('2027-07-06')
    const found = [
      ['of', 'ginger'],
      ['bottles', '4 x 500 ml'],
      ['strength', '95%'],
    ] as const
    expect(startIn(read([oldStart(found)])).named).toMatchObject({ areBottlesNamed: true, isSpiritNamed: false })
  })

  it('tells whose batch it was', () => {
    const origin = (from: string) => startIn(read([oldStart([['from', from]])])).origin
    expect(origin('11nc-hstj 8p50@3m8qv0zt')).toEqual({ code: '11NCHSTJ8P50', shareId: '3m8qv0zt' })
    expect(origin('11NCHSTJ8P50')).toEqual({ code: '11NCHSTJ8P50', shareId: null })
    expect(startIn(read([oldStart([['of', 'ginger']])])).origin).toBeNull()
  })

  it('has its sugar as white sugar', () => {
    const sugarG = { value: 80, plusMinus: 1 }
    expect(startIn(read([oldStart([], { sugarG })])).sweetenings).toEqual([{ material: 'white_sugar', massG: sugarG }])
    expect(startIn(read([oldStart([])])).sweetenings).toEqual([])
  })
})

it('reads a correction of version 3 by what stood typed of its entry then', () => {
  const start = oldStart(
    [
      ['of', '20 g dried ginger'],
      ['spirit', '1 l 95%'],
    ],
    { plants: [oldPlant('ginger', 20)] },
  )
  const {
    seq: _s,
    enteredMs: _e,
    typed: _t,
    atMs: _a,
    day: _d,
    zone: _z,
    ...by
  } = start as typeof start & { seq: number }
  const correction = (seq: number, typed: Typed) => ({
    ...MOMENT,
    seq,
    typed,
    kind: 'corrected',
    of: 1,
    by,
    moved: null,
  })
  const entries = read([
    start,
    correction(2, [['sugar', '80 g']]),
    correction(3, [['of', '20 g fresh ginger']]),
    { ...MOMENT, seq: 4, typed: [], kind: 'undone', of: 3 },
    correction(5, [['sugar', '90 g']]),
  ])
  const dried = entries.map((entry) =>
    entry.kind === 'corrected' && entry.by.kind === 'started' ? entry.by.plants[0]!.isDried : null,
  )
  expect(dried).toEqual([null, true, false, null, true])
})
