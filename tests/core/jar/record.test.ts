import { describe, expect, it } from 'vitest'
import type { Happening, JarEntry } from '../../../core/jar/entry/entry.ts'
import { MOST_CHANGES, MOST_ENTRIES } from '../../../core/jar/record/bounds.ts'
import { correct, record, undo } from '../../../core/jar/record/record.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { refusal, refusedValues } from '../quantity/refusal.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { added, entriesOf, META, ml, on, plant, started, strained, sweetened } from './jars.ts'

const SHAKEN: Happening = { kind: 'shaken' }
const undone = (entries: readonly JarEntry[], times: number): readonly JarEntry[] =>
  times === 0 ? entries : undone(undo(entries, META).entries, times - 1)

describe('record', () => {
  it('numbers entries and keeps what was typed', () => {
    const typed = [['name', 'lemon']] as const
    const { entry, entries } = record(entriesOf(started()), SHAKEN, on(3), { enteredMs: 5, typed })
    expect(entry).toEqual({ seq: 2, enteredMs: 5, typed, ...on(3), kind: 'shaken' })
    expect(entries.map(({ seq }) => seq)).toEqual([1, 2])
  })

  it('changes nothing where it was shaken on that day already', () => {
    const entries = record(entriesOf(started()), SHAKEN, on(3), META).entries
    const again = record(entries, SHAKEN, on(3, 90), META)
    expect(again).toMatchObject({ isAlready: true, unusual: [], entry: { seq: 2 } })
    expect(again.entries).toBe(entries)
    expect(record(entries, SHAKEN, on(4), META).isAlready).toBe(false)
    expect(record(undone(entries, 1), SHAKEN, on(3), META).isAlready).toBe(false)
  })

  it('takes late entries where they fit, whenever they are typed', () => {
    const entries = entriesOf(started(), SHAKEN, strained())
    const late = record(entries, { kind: 'tasted', rating: null, note: 'sharp' }, on(1, 30), META)
    expect(jarStateOf(late.entries)!.happened.map(({ seq }) => seq)).toEqual([1, 2, 4, 3])
    expect(refusal(() => record(entries, SHAKEN, on(-1), META))).toBe('wrong_stage before_start')
  })

  it('names the later entry that is in the way of a late one', () => {
    const later = added({ plants: [plant('basil', 10)] })
    const entries = entriesOf(started(), SHAKEN, later)
    const call = () => record(entries, strained(), on(1, 30), META)
    expect(refusal(call)).toBe('wrong_stage in_the_way')
    expect(refusedValues(call)).toEqual({
      jar: 'lemon',
      did: 'strained',
      day: '2026-11-02',
      later: 'added',
      laterDay: '2026-11-03',
      laterSeq: 3,
    })
  })

  it('says only what this entry has made unusual, in others too', () => {
    const entries = entriesOf(started(), SHAKEN, { kind: 'tasted', rating: 3, note: null }, SHAKEN)
    expect(record(entries, strained(), on(2, 30), META).unusual).toEqual([{ seq: 4, key: 'shaken_after_straining' }])
  })

  it('keeps a note of a thousand characters, whatever the script, and no longer one', () => {
    const noted = (note: string): Happening => ({ kind: 'tasted', rating: null, note })
    expect(record(entriesOf(started()), noted('🍋'.repeat(1000)), on(1), META).entries).toHaveLength(2)
    expect(refusal(() => record(entriesOf(started()), noted('a'.repeat(1001)), on(1), META))).toBe(
      'limit note_too_long',
    )
  })

  it('keeps a thousand entries, and room to end or to take back', () => {
    const [first] = entriesOf(started())
    const tasted: Happening = { kind: 'tasted', rating: null, note: null }
    const full: JarEntry[] = [
      first!,
      ...Array.from(
        { length: MOST_ENTRIES - 1 },
        (_, at) => ({ ...first!, ...on(1), ...tasted, seq: at + 2 }) as JarEntry,
      ),
    ]
    expect(refusal(() => record(full, tasted, on(2), META))).toBe('limit too_many_entries')
    expect(refusal(() => correct(full, 2, tasted, null, META))).toBe('limit too_many_entries')
    expect(record(full, { kind: 'discarded' }, on(2), META).entries).toHaveLength(MOST_ENTRIES + 1)
    expect(undo(full, META).undone.seq).toBe(MOST_ENTRIES)
  })

  it('does not shake what is strained, but on a day before that', () => {
    const entries = entriesOf(started(), strained())
    expect(refusal(() => record(entries, SHAKEN, on(5), META))).toBe('wrong_stage cannot_follow')
    expect(record(entries, SHAKEN, on(0, 60), META).entry.kind).toBe('shaken')
  })

  it('opens once, until that is taken back', () => {
    const open: Happening = { kind: 'opened' }
    const { entries } = record(entriesOf(started(), strained()), open, on(5), META)
    expect(record(entries, open, on(7), META)).toMatchObject({ entries, isAlready: true, entry: { seq: 3, ...on(5) } })
    const taken = undo(entries, META).entries
    expect(record(taken, open, on(7), META).isAlready).toBe(false)
  })

  it('says when it was strained, of what has to come after that', () => {
    const entries = [entriesOf(started())[0]!, { ...entriesOf(started(), strained())[1]!, ...on(9) }]
    for (const late of [sweetened(500, 300), { kind: 'filtered', measured: null }, { kind: 'opened' }] as const) {
      expect(() => record(entries, late, on(5), META)).toThrow(
        expect.objectContaining({ problem: 'before_straining', values: expect.objectContaining({ day: on(9).day }) }),
      )
    }
  })

  it('reckons with sixty changes, however often the jar is tasted', () => {
    const begun = entriesOf(started(), strained())
    const more = Array.from(
      { length: MOST_CHANGES - 2 },
      (_, at) => ({ ...begun[0]!, ...on(at + 2), ...sweetened(1, 1), seq: at + 3 }) as JarEntry,
    )
    const entries = [...begun, ...more]
    const tasted: Happening = { kind: 'tasted', rating: 4, note: null }
    expect(record(entries, tasted, on(99), META).entries).toHaveLength(MOST_CHANGES + 1)
    expect(refusal(() => record(entries, sweetened(1, 1), on(99), META))).toBe('limit too_many_changes')
  })

  it('refuses what would have no contents', () => {
    const hot = { ...spirit(100, 40), atC: 95 }
    expect(refusal(() => record(entriesOf(started()), added({ spirits: [hot] }), on(1), META))).toBe(
      'bad_value temperature_out_of_range',
    )
  })
})

describe('correct', () => {
  const entries = entriesOf(started(), SHAKEN, strained({ measured: ml(700) }), sweetened(500, 300))

  it('puts a measurement right, wherever it stands', () => {
    const right = strained({ measured: ml(950) })
    const { entry, unusual, entries: after } = correct(entries, 3, right, null, META)
    expect(entry).toMatchObject({ seq: 3, day: '2026-11-03', measured: { amount: { value: 950 } } })
    expect(unusual).toEqual([])
    const asRecorded = entriesOf(started(), SHAKEN, right, sweetened(500, 300))
    expect(contentsOf(jarStateOf(after)!)).toEqual(contentsOf(jarStateOf(asRecorded)!))
    expect(after.at(-1)).toMatchObject({ seq: 5, kind: 'corrected', of: 3, day: '2026-11-01', zone: 'UTC' })
  })

  it('corrects again, and is taken back one correction at a time', () => {
    const once = correct(entries, 3, strained({ measured: ml(950) }), null, META).entries
    const twice = correct(once, 3, strained({ measured: ml(910) }), null, META).entries
    expect(jarStateOf(twice)!.strained!.measured!.amount.value).toBe(910)
    expect(jarStateOf(undone(twice, 1))!.strained!.measured!.amount.value).toBe(950)
    expect(jarStateOf(undone(twice, 2))!.strained!.measured!.amount.value).toBe(700)
  })

  it('moves an entry to another day, if all still follows', () => {
    expect(jarStateOf(correct(entries, 2, SHAKEN, on(0, 60), META).entries)!.happened[1]!.day).toBe('2026-11-01')
    expect(refusedValues(() => correct(entries, 3, strained(), on(9), META))).toMatchObject({
      did: 'strained',
      day: '2026-11-10',
      later: 'sweetened',
      laterSeq: 4,
    })
    expect(refusal(() => correct(entries, 1, started(), on(1, 30), META))).toBe('wrong_stage in_the_way')
  })

  it('refuses what makes a later measurement impossible', () => {
    const call = () => correct(entries, 1, started({ spirits: [spirit(100, 95)] }), null, META)
    expect(refusal(call)).toBe('bad_value more_than_went_in')
  })

  it('refuses another kind, and entries that are not there', () => {
    expect(refusal(() => correct(entries, 2, { kind: 'opened' }, null, META))).toBe('bad_value other_kind')
    expect(refusal(() => correct(entries, 9, SHAKEN, null, META))).toBe('not_found no_such_entry')
    expect(refusal(() => correct(undone(entries, 1), 4, sweetened(1, 1), null, META))).toBe('not_found no_such_entry')
  })
})

describe('undo', () => {
  it('goes back by order of entry, not of time, down to nothing', () => {
    const late = record(entriesOf(started(), strained()), SHAKEN, on(0, 60), META).entries
    const first = undo(late, META)
    expect(first.undone).toMatchObject({ seq: 3, kind: 'shaken' })
    const second = undo(first.entries, META)
    expect(second.undone).toMatchObject({ seq: 2, kind: 'strained' })
    const third = undo(second.entries, META)
    expect(jarStateOf(third.entries)).toBeNull()
    expect(refusal(() => undo(third.entries, META))).toBe('wrong_stage nothing_to_undo')
    expect(refusedValues(() => undo(third.entries, META))).toEqual({ jar: 'lemon' })
    expect(refusal(() => record(third.entries, SHAKEN, on(5), META))).toBe('not_found no_such_jar')
  })
})
