import { describe, expect, it } from 'vitest'
import { heldIn } from '../../../core/jar/limits/limits-passed.ts'
import { jugMl, spiritToAdd } from '../../../core/jar/limits/spirit-to-add.ts'
import {
  bytesOf,
  expectNote,
  expectRoom,
  MOST_CHANGES,
  MOST_ENTRIES,
  MOST_JAR_BYTES,
  MOST_NOTE_CHARACTERS,
} from '../../../core/jar/record/bounds.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { refusal } from '../quantity/refusal.ts'
import { entriesOf, ml, started, storyFrom, strained } from './jars.ts'

it('a jar is bounded as the contracts have it', () => {
  expect([MOST_ENTRIES, MOST_CHANGES, MOST_NOTE_CHARACTERS, MOST_JAR_BYTES]).toEqual([1000, 60, 1000, 9_000_000])
})

const expectProblem = (call: () => void, problem: string | null) =>
  problem === null ? expect(call).not.toThrow() : expect(refusal(call)).toBe(problem)

describe('a jar has room', () => {
  const [start] = entriesOf(started())
  const bare = Array.from({ length: MOST_ENTRIES + 100 }, () => start!)

  // The figures of the data model: a thousand entries, and a hundred kept.
  it.each([
    [999, 0, null],
    [1000, 0, 'limit too_many_entries'],
    [1099, 100, null],
    [1100, 100, 'limit too_many_entries'],
  ])('%i entries and %i kept places: %s', (count, kept, problem) => {
    expectProblem(() => expectRoom(bare.slice(0, count), kept), problem)
  })

  // Fewer than 150 entries are not measured: none of them is so long.
  it.each([
    [149, 1, null],
    [150, 0, null],
    [150, 1, 'limit jar_full'],
  ])('%i entries, %i bytes more than a jar holds: %s', (count, moreBytes, problem) => {
    const rest = bare.slice(0, count - 1)
    const sized = (letters: number) => [...rest, { ...start!, typed: [['note', 'x'.repeat(letters)]] as const }]
    const entries = sized(MOST_JAR_BYTES + moreBytes - bytesOf(sized(0)))
    expect(bytesOf(entries)).toBe(9_000_000 + moreBytes)
    expectProblem(() => expectRoom(entries, 0), problem)
  })

  it.each([
    [1000, null],
    [1001, 'limit note_too_long'],
  ])('a note of %i letters: %s', (letters, problem) => {
    expectProblem(() => expectNote({ kind: 'tasted', rating: null, note: '🍋'.repeat(letters) }), problem)
  })
})

describe('spirit that puts a jar right', () => {
  it.each([
    [1, 35],
    [35, 35],
    [36, 40],
    [991, 1000],
    [1000, 1000],
    [1001, 1050],
    [2951, 3000],
    [3000, 3000],
    [3001, 3100],
  ])('%s ml are %s ml by the marks of a jug', (wantedMl, jug) => {
    expect(jugMl(wantedMl)).toBe(jug)
  })

  // Common practice, no source: nobody pours more than three times the jar.
  it.each([
    [2990, 3000],
    [3000, 3000],
    [3001, null],
    [9000, null],
  ])('of a jar of a litre that wants %s ml is %s ml', (wantedMl, spiritMl) => {
    const add = spiritToAdd(storyFrom(started()), 1000, (each) => each.spiritMl >= wantedMl)
    expect(add?.spiritMl ?? null).toBe(spiritMl)
  })
})

describe('limits count the spirit that went in', () => {
  // Estimated: down to six tenths of what was expected, plants and jugs explain it.
  it.each([
    [1, 1],
    [0.6, 1],
    [0.59, 0.59 / 0.6],
    [0.3, 0.5],
  ])('where %s of what was expected came out, %s of it', (cameOut, share) => {
    const unmeasured = storyFrom(started(), strained())
    const expectedMl = contentsOf(unmeasured).outcome.volumeMl.value
    const measured = storyFrom(started(), strained({ measured: ml(cameOut * expectedMl, 0.001) }))
    expect(heldIn(measured).spiritMl / heldIn(unmeasured).spiritMl).toBeCloseTo(share, 6)
  })
})
