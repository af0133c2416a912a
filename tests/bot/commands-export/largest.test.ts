import { expect, it } from 'vitest'
import { LONGEST_LINE } from '../../../bot/chat/grammar/grammar.ts'
import { MOST_BYTES } from '../../../bot/commands/notebook-file/notebook-file.ts'
import { DomainError } from '../../../core/domain-error.ts'
import type { JarEntry } from '../../../core/jar/entry/entry.ts'
import { bytesOf, MOST_ENTRIES, MOST_JAR_BYTES } from '../../../core/jar/record/bounds.ts'
import { correct, record, undo } from '../../../core/jar/record/record.ts'
import { entriesOf, startedAs } from '../commands-jar-views/jars.ts'
import { deskOf, NOW_MS } from './desk.ts'

const moment = { atMs: NOW_MS, day: '2026-11-19', zone: 'UTC' }
const started = entriesOf([{ ...startedAs('walnut'), on: '2026-11-19' }])
const jarWith = (entries: readonly JarEntry[]) => ({ id: 'aaaa1', entries, told: [], cautioned: [] })

/** Four bytes a letter, and two units of a line. */
const NOTE = '🍋'.repeat(1000)
const tasted = { kind: 'tasted', rating: null, note: NOTE } as const

/** Takes a jar's export in elsewhere. */
const carried = async (entries: readonly JarEntry[]) => {
  const files = await (await deskOf({ jars: [jarWith(entries)] })).filesOf('/notebook export:json')
  expect(files).toHaveLength(1)
  expect(Buffer.byteLength(files[0]!)).toBeLessThanOrEqual(MOST_BYTES)
  const desk = await deskOf({})
  expect((await desk.takeIn(files[0]!)).data).toMatchObject({ added: ['aaaa1'], left: [] })
  expect((await desk.person()).jars[0]!.entries).toEqual(entries)
}

it('a thousand of the longest notes are recorded, and taken in again', { timeout: 120_000 }, async () => {
  const meta = { enteredMs: NOW_MS, typed: [['note', NOTE]] as const }
  // All but the last as they are recorded, each of which looks at all before it.
  const notes = Array.from({ length: MOST_ENTRIES - 2 }, (_, index) => ({
    seq: index + 2,
    ...meta,
    ...moment,
    ...tasted,
  }))
  const { entries } = record([...started, ...notes], tasted, moment, meta)
  expect(entries).toHaveLength(MOST_ENTRIES)
  expect(bytesOf(entries)).toBeGreaterThan(8_000_000)
  expect(bytesOf(entries)).toBeLessThan(MOST_JAR_BYTES)
  await carried(entries)
})

it('the largest jar that can be, corrected with the longest lines, is taken in again too', {
  timeout: 120_000,
}, async () => {
  // Three bytes for each unit of a line, which no note of a thousand letters reaches.
  const typed = [['note', '柠'.repeat(LONGEST_LINE - 6)]] as const
  const first = record(started, tasted, moment, { enteredMs: NOW_MS, typed }).entries
  const amendment = { enteredMs: NOW_MS, typed, zone: 'UTC' }
  const one = correct(first, 2, tasted, null, amendment).entries.at(-1)!
  let entries: readonly JarEntry[] = [
    ...first,
    ...Array.from({ length: Math.floor((MOST_JAR_BYTES - bytesOf(first)) / bytesOf([one])) - 1 }, (_, index) => ({
      ...one,
      seq: index + 3,
    })),
  ]
  const add = () => {
    entries = correct(entries, 2, tasted, null, amendment).entries
  }
  while (bytesOf(entries) <= MOST_JAR_BYTES) add()
  expect(entries.length).toBeLessThan(MOST_ENTRIES)
  let refused: unknown = null
  try {
    add()
  } catch (error) {
    refused = error
  }
  expect(refused).toBeInstanceOf(DomainError)
  expect(refused).toMatchObject({ code: 'limit', problem: 'jar_full', values: { jar: 'walnut' } })
  // Its end and what is taken back have their places all the same.
  entries = undo(entries, amendment).entries
  entries = record(entries, { kind: 'discarded' }, moment, { enteredMs: NOW_MS, typed: [] }).entries
  await carried(entries)
})

it('a jar with as many entries as are kept, each taken back or late, is taken in again', {
  timeout: 120_000,
}, async () => {
  let entries: readonly JarEntry[] = entriesOf([{ ...startedAs('walnut'), on: '2026-11-10' }])
  const meta = { enteredMs: NOW_MS, typed: [] }
  for (let seq = 2; seq < MOST_ENTRIES; seq += 2) {
    const late = { seq, ...meta, ...moment, atMs: moment.atMs - seq, kind: 'tasted', rating: 3, note: null } as const
    entries = [...entries, late, { seq: seq + 1, ...meta, ...moment, kind: 'undone', of: seq }]
  }
  await carried(entries)
})
