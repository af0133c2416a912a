import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { csvText } from '../../../bot/commands/notebook-file/csv-file.ts'
import { runs, SEED } from '../../runs.ts'
import { deskOf, lemonJar, walnutJar } from './desk.ts'

type Rows = Record<string, string>[]

const read = (text: string): Rows => parse(text, { columns: true, bom: true, record_delimiter: '\r\n' })

/** As the note says: one apostrophe was put before what begins with a sign. */
const unguarded = (cell: string): string => cell.replace(/^'/, '')

const FORMULA = /^[=+\-@\t\r]/

describe('/notebook export:csv', () => {
  it('has a line for each batch and one for each entry, with quotes, commas and line breaks as typed', async () => {
    const jars = [lemonJar('a "b", c'), walnutJar('=1+1')]
    const desk = await deskOf({ jars })
    const [batches, entries] = (await desk.filesOf('/notebook export:csv')).map(read)
    expect(batches!.map(({ name }) => unguarded(name!))).toEqual(['a "b", c', '=1+1'])
    expect(batches![1]!.name).toBe("'=1+1")
    expect(entries).toHaveLength(jars[0]!.entries.length + jars[1]!.entries.length)
    expect(entries![2]).toMatchObject({ jarId: 'aaaa1', kind: 'tasted', rating: '3', note: 'sharp, "fine"\nand =1+1' })
    expect(entries![4]).toMatchObject({ kind: 'discarded', undone: 'yes' })
    expect(entries![5]).toMatchObject({ kind: 'undone', amends: '5' })
    for (const cell of [...batches!, ...entries!].flatMap((row) => Object.values(row))) {
      expect(cell).not.toMatch(FORMULA)
    }
  })

  it('lacks nothing of an entry', async () => {
    const jar = lemonJar()
    const [, entries] = (await (await deskOf({ jars: [jar] })).filesOf('/notebook export:csv')).map(read)
    const again = entries!.map(({ entry, kind, day, at, zone, enteredAt, details }) => ({
      seq: Number(entry),
      kind,
      day,
      atMs: Date.parse(at!),
      zone,
      enteredMs: Date.parse(enteredAt!),
      ...JSON.parse(details!),
    }))
    expect(again).toEqual(jar.entries.map(({ typed: _, ...entry }) => entry))
  })

  it('begins with the mark of UTF-8, so that a spreadsheet reads every script', async () => {
    const [batches] = await (await deskOf({ jars: [walnutJar('柠檬')] })).filesOf('/notebook export:csv')
    expect(batches!.startsWith('\ufeff')).toBe(true)
    expect(read(batches!)[0]!.name).toBe('柠檬')
  })

  it('is harmless and gives back what went in, whatever that is', async () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc
        .tuple(fc.constantFrom('=', '+', '-', '@', '\t', '\r', "'", '＝', '"', ','), fc.string())
        .map(([a, b]) => a + b),
    )
    await fc.assert(
      fc.asyncProperty(text, text, async (one, other) => {
        const [row] = read(await csvText([{ one, other, number: -1 }]))
        expect([row!.one, row!.other].map((cell) => unguarded(cell!))).toEqual([one, other])
        for (const cell of [row!.one, row!.other]) expect(cell).not.toMatch(FORMULA)
      }),
      { seed: SEED, numRuns: runs(300, 5000) },
    )
  })
})
