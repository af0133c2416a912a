import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { NOBODY, type Person } from '../../store/person.ts'
import { StorageError } from '../../store/storage-error.ts'
import { runs } from '../runs.ts'
import { inFolder } from './in-folder.ts'
import { jarOf, nudgeAt, personWith, userId } from './some-people.ts'
import { NOW_MS, storeIn } from './some-store.ts'
import { failure, watchedDisk } from './watched-disk.ts'

const [A, B, C] = [userId(1), userId(2), userId(3)]
const PEOPLE = [A, B, C]

type Store = ReturnType<typeof storeIn>

const FIRST = personWith({ jars: [jarOf('k7f2a', 2)], nudges: [nudgeAt(100)] })
const SECOND = personWith({ jars: [jarOf('k7f2a', 3)], nudges: [nudgeAt(200)] })
const BEFORE = personWith({ jars: [jarOf('b2b2b', 1)], nudges: [nudgeAt(300)] })

/** What is done, to whom, and how they stand afterwards: C's file is nonsense at first. */
const STEPS: readonly [userId: string | null, work: (store: Store) => Promise<unknown>, after: Person | null][] = [
  [null, (store) => store.read(A), null],
  [A, (store) => store.update(A, () => FIRST), FIRST],
  [null, (store) => store.claimDue(0, 9, 60), null],
  [A, (store) => store.update(A, () => SECOND), SECOND],
  [null, (store) => store.nightly(), null],
  [null, (store) => store.read(C), null],
  [B, (store) => store.remove(B), NOBODY],
]

const withoutNote = (person: Person): Person => ({ ...person, setAside: null })

/** Fails at the calls that `fails` picks, does every step, and holds what was acknowledged against what is there. */
const attempt = (fails: (call: number) => boolean, code: string, key: string): Promise<number> =>
  inFolder(async (folder) => {
    const before = storeIn(folder)
    await before.update(B, () => BEFORE)
    await before.nightly()
    await before.close()
    await writeFile(join(folder, 'users', `${C}.json`), 'nonsense')

    let calls = 0
    let isWell = false
    const disk = watchedDisk(() => {
      calls += 1
      if (!isWell && fails(calls)) throw failure(code)
    })
    const store = storeIn(folder, { disk })
    const may = new Map<string, readonly Person[]>([
      [A, [NOBODY]],
      [B, [BEFORE]],
      [C, [NOBODY]],
    ])
    for (const [who, work, after] of STEPS) {
      try {
        await work(store)
        if (who !== null && after !== null) may.set(who, [after])
      } catch (error) {
        expect(error).toBeInstanceOf(StorageError)
        expect([key, 'unreadable', 'unsure', 'half_erased']).toContain((error as StorageError).problem)
        if (who !== null && after !== null) may.set(who, [...may.get(who)!, after])
      }
    }
    isWell = true
    const seen = await Promise.all(PEOPLE.map((who) => store.read(who)))
    PEOPLE.forEach((who, index) => {
      expect(may.get(who)).toContainEqual(withoutNote(seen[index]!))
    })
    // The index agrees with the files, whatever failed; nobody was claimed yet.
    const due = PEOPLE.filter((_, index) => seen[index]!.nudges.length > 0)
    expect([...(await store.claimDue(NOW_MS, 9, 60))].sort()).toEqual(due)
    const fresh = storeIn(folder)
    expect(await Promise.all(PEOPLE.map((who) => fresh.read(who)))).toEqual(seen)
    await store.update(A, () => FIRST)
    expect(await fresh.read(A)).toEqual(FIRST)
    expect(await store.remove(A)).toMatchObject({ jars: 1, entries: 2 })
    expect(await fresh.read(A)).toEqual(NOBODY)
    await store.update(B, () => BEFORE)
    await store.close()
    // A process that begins finds the same by the stamps.
    const left = await Promise.all(PEOPLE.map((who) => fresh.read(who)))
    const stillDue = PEOPLE.filter((_, index) => left[index]!.nudges.length > 0)
    expect([...(await fresh.claimDue(NOW_MS, 9, 60))].sort()).toEqual(stillDue)
    await fresh.close()
    return calls
  })

const CODES = [
  ['ENOSPC', 'disk_full'],
  ['EIO', 'disk_failed'],
  ['EACCES', 'no_rights'],
] as const

/** Under the short counts every second call fails, with one of the codes, under the full ones each with each. */
const codesFor = (call: number) => (runs(1, CODES.length) === 1 ? [CODES[call % CODES.length]!] : CODES)

it('loses nothing that was acknowledged, whichever call fails', { timeout: 600_000 }, async () => {
  const calls = await attempt(() => false, 'EIO', 'disk_failed')
  expect(calls).toBeGreaterThan(50)
  for (let fatal = 1; fatal <= calls; fatal += runs(2, 1)) {
    for (const [code, key] of codesFor(fatal)) await attempt((call) => call === fatal, code, key)
  }
})

it('loses nothing that was acknowledged where every call fails from then on', { timeout: 600_000 }, async () => {
  const calls = await attempt(() => false, 'EIO', 'disk_failed')
  for (let first = 1; first <= calls; first += runs(7, 1)) {
    for (const [code, key] of codesFor(first)) await attempt((call) => call >= first, code, key)
  }
})

it('names the file, the folder or the code', () =>
  inFolder(async (folder) => {
    const path = join(folder, 'users', `${A}.json`)
    for (const [code, problem, values] of [
      ['ENOSPC', 'disk_full', { path }],
      ['EDQUOT', 'disk_full', { path }],
      ['EACCES', 'no_rights', { path }],
      ['EPERM', 'no_rights', { path }],
      ['EROFS', 'no_rights', { path }],
      ['EIO', 'disk_failed', { path, code: 'EIO' }],
    ] as const) {
      const disk = watchedDisk((name) => {
        if (name === 'writeFile') throw failure(code)
      })
      const store = storeIn(folder, { disk })
      await expect(store.update(A, () => FIRST)).rejects.toMatchObject({ code: 'storage', problem, values })
      await store.close()
    }
    await writeFile(join(folder, 'file'), '')
    const within = storeIn(join(folder, 'file'))
    await expect(within.update(A, () => FIRST)).rejects.toMatchObject({ problem: 'disk_failed' })
    await expect(within.read(A)).rejects.toMatchObject({ problem: 'disk_failed', values: { code: 'ENOTDIR' } })
  }))
