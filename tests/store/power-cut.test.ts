import { join } from 'node:path'
import { expect, it } from 'vitest'
import { NOBODY, type Person } from '../../store/person.ts'
import { StorageError } from '../../store/storage-error.ts'
import { runs } from '../runs.ts'
import { inFolder } from './in-folder.ts'
import { powerCutDisk } from './power-cut-disk.ts'
import { jarOf, personWith, userId } from './some-people.ts'
import { personIn, storeIn } from './some-store.ts'
import { stampHolds } from './stamps.ts'

const A = userId(1)
const STATES = [1, 2, 3].map((entries) => personWith({ jars: [jarOf('k7f2a', entries)] }))

type Change = (person: Person) => Person | null
const nothing: Change = () => null

/** Changes, and in between asks for changes that come to nothing, as a step that was made already is. */
const CHANGES: readonly Change[] = [
  () => STATES[0]!,
  nothing,
  () => STATES[1]!,
  nothing,
  nothing,
  () => STATES[2]!,
  nothing,
]

/** Does all changes while the calls that `fails` picks fail; whatever is acknowledged must outlive a power cut then. */
const attempt = (fails: (call: number) => boolean): Promise<{ calls: number; unsure: number }> =>
  inFolder(async (folder) => {
    let [calls, unsure] = [0, 0]
    const { disk, afterCut } = powerCutDisk((_, at) => at.startsWith(join(folder, 'users')) && fails(++calls))
    const store = storeIn(folder, { disk })
    const path = join(folder, 'users', `${A}.json`)
    const found = (): Person => {
      const text = afterCut(path)
      if (text === null) return NOBODY
      expect(stampHolds(text)).toBe(true)
      return personIn(text)
    }
    for (const change of CHANGES) {
      try {
        const acknowledged = await store.update(A, change)
        expect(found()).toEqual(acknowledged)
      } catch (error) {
        expect(error).toBeInstanceOf(StorageError)
        if ((error as StorageError).problem === 'unsure') unsure += 1
        // A look in between changes nothing about it.
        await store.read(A)
      }
    }
    await store.close()
    return { calls, unsure }
  })

it('keeps what it acknowledged through a power cut, whichever call fails', { timeout: 300_000 }, async () => {
  const { calls } = await attempt(() => false)
  expect(calls).toBeGreaterThan(10)
  let doubts = 0
  for (let fatal = 1; fatal <= calls + 1; fatal++) doubts += (await attempt((call) => call === fatal)).unsure
  expect(doubts).toBe(3)
})

it('keeps it whichever two or three calls in a row fail, and from then on', { timeout: 300_000 }, async () => {
  const { calls } = await attempt(() => false)
  for (let first = 1; first <= calls; first += runs(2, 1)) {
    for (const many of [2, 3, Number.POSITIVE_INFINITY]) {
      await attempt((call) => call >= first && call < first + many)
    }
  }
})
