import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Happening, JarEntry } from '../../../core/jar/entry/entry.ts'
import { MOST_CHANGES } from '../../../core/jar/record/bounds.ts'
import { correct, undo } from '../../../core/jar/record/record.ts'
import { replay } from '../../../core/jar/record/replay.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { runs, SEED } from '../../runs.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { added, DAY_MS, entriesOf, META, ml, on, plant, started, strained, sweetened, unsoundIn } from './jars.ts'

const YEAR_DAYS = 366
const whyOf = (entries: readonly JarEntry[]) => unsoundIn(entries)?.why ?? null
const startWith = (rest: Parameters<typeof started>[0]) => whyOf(entriesOf(started(rest)))
/** Entries as a file may hold them, recorded by nobody. */
const given = (...happenings: readonly Happening[]): readonly JarEntry[] =>
  happenings.map((happening, index) => ({ seq: index + 1, ...META, ...on(index), ...happening }))

describe('an entry by itself is in the ranges of a kitchen', () => {
  // As the grammar of quantities accepts them: up to 1,000 l and 1,000 kg, -30 to 100 °C, 1,200 g/L, and some room.
  it.each<[string, number, (value: number) => string | null]>([
    ['g of water', 1e6, (value) => whyOf(given(started({ waterG: exactly(value) })))],
    ['g of a plant', 1e6, (value) => whyOf(given(started({ plants: [plant('lemon_peel', value)] })))],
    [
      'g/L of sugar',
      1300,
      (value) => whyOf(given(started({ plan: { targets: { abvPercent: 1, sugarGPerL: value } } }))),
    ],
    ['% vol', 100, (value) => whyOf(given(started({ plan: { targets: { abvPercent: value, sugarGPerL: 0 } } })))],
    ['°C', 100, (value) => whyOf(given(started(), strained({ measured: ml(800, 10, value) })))],
    ['pieces', 10_000, (value) => whyOf(given(started({ plants: [plant('lemon_peel', 9, { count: value })] })))],
    ['days of rest', 20 * YEAR_DAYS, (value) => startWith({ plan: { restDays: value } })],
    [
      'hours of steeping',
      20 * YEAR_DAYS * 24,
      (value) => startWith({ plan: { isHours: true, steepHours: { min: 1, max: value } } }),
    ],
  ])('%s: up to %s', (_, most, why) => {
    expect(why(most)).not.toBe('amount')
    expect(why(most + 1)).toBe('amount')
  })

  it('no less than 0.01 g came out of a jar', () => {
    expect(whyOf(given(started(), strained({ measured: ml(0.01) })))).not.toBe('amount')
    expect(whyOf(given(started(), strained({ measured: ml(0.009) })))).toBe('amount')
  })

  it('no drink is to become what has no room in a litre', () => {
    const to = (sugarGPerL: number) => whyOf(given(started({ plan: { targets: { abvPercent: 30, sugarGPerL } } })))
    expect(to(1000)).not.toBe('amount')
    expect(to(1104)).toBe('amount')
    const weak = (abvPercent: number) => whyOf(given(started({ plan: { targets: { abvPercent, sugarGPerL: 0 } } })))
    expect(weak(0.1)).not.toBe('amount')
    expect(weak(0.09)).toBe('amount')
  })

  it('no spirit is weaker than 0.1 % vol, nothing colder than -30 °C', () => {
    expect(startWith({ spirits: [spirit(1000, 0.1)] })).toBeNull()
    expect(startWith({ spirits: [spirit(1000, 0.0999)] })).toBe('amount')
    const at = (tempC: number) => whyOf(given(started(), strained({ measured: ml(800, 10, tempC) })))
    expect(at(-30)).not.toBe('amount')
    expect(at(-31)).toBe('amount')
  })

  it('its day is that of its instant in its zone, three days about', () => {
    const shifted = (days: number) => {
      const [entry] = entriesOf(started())
      return whyOf([{ ...entry!, atMs: entry!.atMs + days * DAY_MS }])
    }
    expect([-4, -3, 3, 4].map(shifted)).toEqual(['day', null, null, 'day'])
  })

  it('its days lie within twenty years of its jar', () => {
    expect(startWith({ plan: { strainBy: '2046-11-15' } })).toBeNull()
    expect(startWith({ plan: { strainBy: '2046-12-15' } })).toBe('day')
  })

  it('its texts are no longer than what can be typed, and not more', () => {
    const typed = (options: JarEntry['typed'], most = 4000) =>
      unsoundIn(
        entriesOf(started()).map((entry) => ({ ...entry, typed: options })),
        most,
      )?.why ?? null
    expect(typed([['note', 'x'.repeat(10)]], 10)).toBeNull()
    expect(typed([['note', 'x'.repeat(11)]], 10)).toBe('long')
    const many = (count: number) => typed(Array.from({ length: count }, (_, index) => [`of-${'x'.repeat(index)}`, 'y']))
    expect(many(37)).toBeNull()
    expect(typed([[`o${'x'.repeat(39)}`, 'y']])).toBeNull()
    expect(typed([[`o${'x'.repeat(40)}`, 'y']])).toBe('long')
    expect(typed(Array.from({ length: 40 }, () => ['of', 'y']))).toBeNull()
    expect(typed(Array.from({ length: 41 }, () => ['of', 'y']))).toBe('long')
    const called = (length: number) => startWith({ plants: [plant(null, 1, { name: 'x'.repeat(length) })] })
    expect([600, 601].map(called)).toEqual([null, 'long'])
    const parts = (count: number) => startWith({ plants: Array.from({ length: count }, () => plant('lemon_peel', 1)) })
    expect([60, 61].map(parts)).toEqual([null, 'long'])
  })
})

describe('entries that follow one another', () => {
  it('are sound however they were recorded, amended and taken back', () => {
    const happening = fc.constantFrom<Happening>(
      { kind: 'tasted', rating: 4, note: null },
      added({ spirits: [spirit(100, 40)] }),
      sweetened(300, 200),
      { kind: 'renamed', name: 'lime' },
      { kind: 'put_off', untilDay: '2026-12-01', untilMs: null },
    )
    const amend = fc.constantFrom('no', 'correct', 'undo')
    fc.assert(
      fc.property(fc.array(fc.tuple(happening, amend), { maxLength: 8 }), (steps) => {
        let entries = entriesOf(started(), strained())
        for (const [what, how] of steps) {
          entries = [...entries, ...entriesOf(started(), strained(), what).slice(2)].map((entry, index) => ({
            ...entry,
            seq: index + 1,
          }))
          if (how === 'correct') entries = correct(entries, entries.length, what, null, META).entries
          if (how === 'undo') entries = undo(entries, META).entries
        }
        expect(unsoundIn(entries)).toBeNull()
      }),
      { seed: SEED, numRuns: runs(30, 500) },
    )
  })

  it('are judged as `record` judges them: what was measured counts in the end alone', () => {
    const tooMuch = strained({ measured: ml(9000) })
    expect(unsoundIn(given(started(), tooMuch))).toEqual({ seq: 2, why: 'follow' })
    const [, wrong] = given(started(), tooMuch)
    const right = {
      ...META,
      ...on(2),
      seq: 3,
      kind: 'corrected',
      of: 2,
      by: strained({ measured: ml(800) }),
      moved: null,
    }
    expect(unsoundIn([...given(started()), wrong!, right as JarEntry])).toBeNull()
  })

  it('name the last where a reading is beyond what liquids are known for', () => {
    const hot = given(started(), strained({ measured: ml(800, 10, 100) }))
    expect(unsoundIn(hot)).toEqual({ seq: 2, why: 'follow' })
  })

  it('are as many that change the liquid as `record` takes', () => {
    const jar = (count: number) =>
      given(started(), strained(), ...Array.from({ length: count - 2 }, () => sweetened(1, 1)))
    expect(unsoundIn(jar(MOST_CHANGES))).toBeNull()
    expect(unsoundIn(jar(MOST_CHANGES + 1))).toEqual({ seq: MOST_CHANGES + 1, why: 'follow' })
  })

  it('take back the last that stands, and nothing where none does', () => {
    const undone = (seq: number, of: number): JarEntry => ({ ...META, ...on(5), seq, kind: 'undone', of })
    const jar = given(started(), { kind: 'shaken' })
    expect(whyOf([...jar, undone(3, 2), undone(4, 1)])).toBeNull()
    expect(whyOf([...jar, undone(3, 1)])).toBe('amends')
    expect(whyOf([...jar, undone(3, 2), undone(4, 1), undone(5, 1)])).toBe('amends')
  })
})

it('lets others have their turn before every amendment', () => {
  const tasted: Happening = { kind: 'tasted', rating: 4, note: null }
  const amended = Array.from({ length: 7 }).reduce<readonly JarEntry[]>(
    (entries) => correct(entries, 2, tasted, null, META).entries,
    entriesOf(started(), tasted),
  )
  let turns = 0
  for (const _ of replay(amended, 4000)) turns++
  expect(turns).toBe(7)
})
