import { describe, expect, it, test } from 'vitest'
import type { Happening, HappeningKind } from '../../../core/jar/entry/entry.ts'
import { broughtBy } from '../../../core/jar/pour/pour-together.ts'
import { expectFollows } from '../../../core/jar/record/check-sequence.ts'
import { record } from '../../../core/jar/record/record.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { refusal, refusedValues } from '../quantity/refusal.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { added, entriesOf, META, ml, on, plant, started, storyFrom, strained, strength, sweetened } from './jars.ts'

const EVERY: readonly Happening[] = [
  started(),
  { kind: 'shaken' },
  { kind: 'tasted', rating: 4, note: null },
  added({ plants: [plant('basil', 10)] }),
  strained(),
  { kind: 'filtered', measured: null },
  sweetened(500, 300),
  { kind: 'fruit_sugared', sweetenings: whiteSugar(exactly(200)) },
  { kind: 'taken_out', plants: [] },
  { kind: 'parted', kept: { value: 0.5, plusMinus: 0 }, other: 'sun', isNew: false },
  { kind: 'poured_in', ...broughtBy(storyFrom(started(), strained()), exactly(0.1)), into: null },
  { kind: 'noted', note: 'clear', where: null, vessel: null },
  { kind: 'bottled', bottles: [{ count: 2, volumeMl: 500 }] },
  { kind: 'bottles_out', use: 'given', bottles: [] },
  { kind: 'opened' },
  { kind: 'emptied' },
  { kind: 'discarded' },
  { kind: 'renamed', name: 'sun' },
  { kind: 'put_off', untilDay: '2026-12-24', untilMs: null },
]

/** Which kinds may come next. */
const mayFollow = (...before: readonly Happening[]): readonly HappeningKind[] =>
  EVERY.filter((each) => {
    try {
      record(entriesOf(...before), each, on(before.length), META)
      return true
    } catch {
      return false
    }
  }).map(({ kind }) => kind)

describe('what may follow', () => {
  it('the start: all that does not need straining', () => {
    expect(mayFollow(started())).toEqual([
      'shaken',
      'tasted',
      'added',
      'strained',
      'taken_out',
      'parted',
      'noted',
      'discarded',
      'renamed',
      'put_off',
    ])
  })

  it('straining: all but straining again, plants and shaking', () => {
    const before = ['tasted', 'filtered', 'sweetened', 'fruit_sugared']
    const after = ['noted', 'bottled', 'opened', 'emptied', 'discarded', 'renamed', 'put_off']
    expect(mayFollow(started(), strained())).toEqual([...before, 'parted', 'poured_in', ...after])
    const bottled = [started(), strained(), sweetened(500, 300), { kind: 'bottled', bottles: [] } as const]
    const shelved = after.flatMap((kind) => (kind === 'opened' ? ['bottles_out', kind] : [kind]))
    expect(mayFollow(...bottled)).toEqual([...before, ...shelved])
  })

  it.each([{ kind: 'emptied' }, { kind: 'discarded' }] as const)('$kind: tasting, noting and renaming', (end) => {
    expect(mayFollow(started(), strained(), end)).toEqual(['tasted', 'noted', 'renamed'])
  })

  it('nothing: only a start', () => {
    expect(EVERY.filter((each) => refusedBeforeStart(each) === 'not_found no_such_jar')).toHaveLength(EVERY.length - 1)
  })
})

const refusedBeforeStart = (each: Happening): string => {
  try {
    return record([], each, on(0), META) && 'taken'
  } catch {
    return refusal(() => record([], each, on(0), META))
  }
}

describe('what is said of what cannot follow', () => {
  it('straining first', () => {
    const call = () => entriesOf(started(), { kind: 'opened' })
    expect(refusal(call)).toBe('wrong_stage cannot_follow')
    expect(refusedValues(call)).toEqual({
      jar: 'lemon',
      did: 'opened',
      stage: 'steeping',
      first: 'strained',
      day: null,
    })
  })

  it('the day on which it was strained', () => {
    expect(refusedValues(() => entriesOf(started(), strained(), { kind: 'renamed', name: 'sun' }, strained()))).toEqual(
      {
        jar: 'sun',
        did: 'strained',
        stage: 'strained',
        first: null,
        day: '2026-11-02',
      },
    )
  })
})

describe('what is worth a word', () => {
  const unusual = (...happenings: readonly Happening[]) => expectFollows(entriesOf(...happenings)).map(({ key }) => key)
  const done = [started(), strained(), sweetened(500, 300)] as const
  const bottled: Happening = { kind: 'bottled', bottles: [{ count: 2, volumeMl: 500 }] }

  test.each<readonly [string, readonly Happening[], readonly string[]]>([
    ['a usual batch', [...done, bottled], []],
    ['spirit after straining', [...done, added({ spirits: [spirit(50, 40)] })], ['added_spirit_after_straining']],
    ['water after straining', [...done, added({ waterG: exactly(50) })], []],
    ['straining before its time', [started({ plan: { strainFrom: '2026-11-20' } }), strained()], ['strained_early']],
    ['straining in time', [started({ plan: { strainFrom: '2026-11-02' } }), strained()], []],
    ['sweetening again', [...done, sweetened(0, 50)], ['sweetened_again']],
    ['sweetening from the bottle', [...done, bottled, sweetened(0, 50)], ['changed_after_bottling', 'sweetened_again']],
    ['bottling without sugar', [started(), strained(), bottled], ['bottled_unsweetened']],
    [
      'bottling what was sweet in the jar',
      [started({ sweetenings: whiteSugar(exactly(200)) }), strained(), bottled],
      [],
    ],
    [
      'bottling what is to be dry',
      [started({ plan: { targets: { abvPercent: 40, sugarGPerL: 0 } } }), strained(), bottled],
      [],
    ],
    ['opening unbottled', [started(), strained(), { kind: 'opened' }], ['opened_unbottled']],
    ['opening early', [...done, bottled, { kind: 'opened' }], ['opened_early']],
    [
      'tasting what is gone',
      [...done, { kind: 'emptied' }, { kind: 'tasted', rating: 5, note: null }],
      ['tasted_after_end'],
    ],
    ['a volume beyond what was expected', [started(), strained({ measured: ml(700) })], ['reading_surprising']],
    ['a volume as expected', [started(), strained({ measured: ml(950) })], []],
    ['a strength beyond what was expected', [started(), strained({ strength: strength(60) })], ['reading_surprising']],
    ['half of it gone in the filter', [...done, { kind: 'filtered', measured: ml(500) }], ['reading_surprising']],
  ])('%s', (_, happenings, keys) => {
    expect(unusual(...happenings)).toEqual(keys)
  })

  it('opening after the rest is usual', () => {
    const entries = entriesOf(...done, bottled)
    expect(record(entries, { kind: 'opened' }, on(40), META).unusual).toEqual([])
  })
})
