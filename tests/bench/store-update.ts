import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import { open, rename } from 'node:fs/promises'
import { join } from 'node:path'
import { openStore } from '../../store/open/open-store.ts'
import type { Person } from '../../store/person.ts'
import { shakenEntry, userId } from '../store/some-people.ts'
import { ENTRIES, JARS, makerOf, NOW_MS, RULES, ZONE } from './store-people.ts'

type Row = [label: string, value: string, goal?: string]

const UPDATES = 300

const median = (values: readonly number[]): number => [...values].sort((one, other) => one - other)[values.length >> 1]!

const took = async (work: () => Promise<unknown>): Promise<number> => {
  const startMs = performance.now()
  await work()
  return performance.now() - startMs
}

/** The least that makes a file durable: temporary file, fsync, rename, fsync of the folder. */
export async function bareWrite(folder: string, name: string, text: string): Promise<void> {
  const temporary = join(folder, `${name}.tmp`)
  const file = await open(temporary, 'w', 0o600)
  await file.writeFile(text)
  await file.sync()
  await file.close()
  await rename(temporary, join(folder, name))
  const within = await open(folder, 'r')
  await within.sync()
  await within.close()
}

/** Shaken once more; every other time that is taken away again, so that the file keeps its size. */
const shaken = (person: Person): Person => {
  const [first, ...others] = person.jars
  const entries =
    first!.entries.length > ENTRIES
      ? first!.entries.slice(0, -1)
      : [...first!.entries, shakenEntry(ENTRIES + 1, NOW_MS)]
  return { ...person, jars: [{ ...first!, entries }, ...others] }
}

async function onePerson(folder: string): Promise<Row[]> {
  const store = openStore({ folder, assumedZone: ZONE, rules: RULES, nowMs: () => NOW_MS, log: console.error })
  await store.update(userId(0), () => makerOf(0))
  await store.claimDue(0, 1, 1)
  const text = readFileSync(join(folder, 'users', `${userId(0)}.json`), 'utf8')
  const bare = join(folder, 'bare')
  mkdirSync(bare)
  const [ours, bares, ratios]: [number[], number[], number[]] = [[], [], []]
  // Turn by turn, so that both meet the same disk.
  for (let count = 0; count < UPDATES; count++) {
    const [our, their] = [
      await took(() => store.update(userId(0), shaken)),
      await took(() => bareWrite(bare, 'person.json', text)),
    ]
    ours.push(our)
    bares.push(their)
    ratios.push(our / their)
  }
  await store.close()
  const kilobytes = (text.length / 1000).toFixed(0)
  return [
    [`update of a person with ${JARS} jars of ${ENTRIES} entries (${kilobytes} kB)`, `${median(ours).toFixed(2)} ms`],
    ['bare write, fsync, rename, fsync of the folder of the same bytes', `${median(bares).toFixed(2)} ms`],
    ['update / bare write', (median(ours) / median(bares)).toFixed(2), 'at most 1.50'],
  ]
}

async function oneFileForAll(folder: string, jars: number): Promise<Row> {
  const all = Array.from({ length: jars / JARS }, (_, index) => makerOf(index % 500))
  const write = () => {
    all[0] = shaken(all[0]!)
    return bareWrite(folder, 'all.json', JSON.stringify(all))
  }
  const times: number[] = []
  for (let count = 0; count < (jars > 10_000 ? 3 : 9); count++) times.push(await took(write))
  return [
    `the same in one JSON file for everybody, ${jars.toLocaleString('en-US')} jars`,
    `${median(times).toFixed(1)} ms`,
  ]
}

/** A change of one person's file, beside the least it could cost and beside one file for everybody. */
export async function updateRows(folder: string): Promise<Row[]> {
  const rows = await onePerson(folder)
  for (const jars of [1000, 10_000, 100_000]) rows.push(await oneFileForAll(folder, jars))
  rmSync(join(folder, 'all.json'))
  return rows
}
