import { existsSync } from 'node:fs'
import { readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { inFolder } from './in-folder.ts'
import { jarOf, nudgeAt, personWith, userId } from './some-people.ts'
import { NOW_MS, type StoreOnDisk, storeIn } from './some-store.ts'

const [A, B] = [userId(1), userId(2)]
const DAY_MS = 86_400_000

/** A store whose nights pass when they are told to, and what its folder of copies holds. */
const withNights = (
  work: (
    store: StoreOnDisk,
    night: (days?: number) => Promise<number>,
    copies: () => Promise<string[]>,
  ) => Promise<void>,
): Promise<void> =>
  inFolder(async (folder) => {
    let nowMs = NOW_MS
    const store = storeIn(folder, { nowMs: () => nowMs })
    const night = (days = 1): Promise<number> => {
      nowMs += days * DAY_MS
      return store.nightly()
    }
    const copies = async (): Promise<string[]> => {
      const names = await readdir(join(folder, 'copies'), { recursive: true })
      return names.filter((name) => name.endsWith('.json')).sort()
    }
    await store.update(A, () => personWith({ nudges: [nudgeAt(0)] }))
    await store.update(B, () => personWith({ jars: [jarOf('k7f2a', 2)] }))
    await work(store, night, copies)
    await store.close()
  })

it('copies what changed since the last copy', () =>
  withNights(async (store, night, copies) => {
    expect(await night()).toBe(2)
    expect(await night()).toBe(0)
    await store.update(A, () => personWith({ nudges: [nudgeAt(1)] }))
    expect(await night()).toBe(1)
    expect(await copies()).toEqual([`2026-11-26/${A}.json`, `2026-11-26/${B}.json`, `2026-11-28/${A}.json`])
  }))

it('keeps seven days, and always a copy of everybody', () =>
  withNights(async (store, night, copies) => {
    for (let count = 1; count <= 12; count++) {
      await store.update(A, () => personWith({ nudges: [nudgeAt(count)] }))
      // Whose only copy went with the oldest day is copied again.
      expect(await night()).toBe(count === 1 || count === 8 ? 2 : 1)
      expect(await copies()).toHaveLength(Math.min(count, 7) + 1)
    }
    const days = (await copies()).map((path) => path.slice(0, 10))
    expect([...new Set(days)]).toEqual(['01', '02', '03', '04', '05', '06', '07'].map((day) => `2026-12-${day}`))
    expect((await copies()).filter((path) => path.includes(B))).toEqual([`2026-12-03/${B}.json`])
  }))

it('copies of the same day hold the latest', () =>
  withNights(async (store, night) => {
    await night()
    await store.update(A, () => personWith({ nudges: [nudgeAt(7)] }))
    expect(await night(0)).toBe(1)
    expect(await night(0)).toBe(0)
  }))

it('copies on when the clock went back a year', () =>
  withNights(async (store, night, copies) => {
    for (let count = 0; count < 8; count++) await night()
    await store.update(A, () => personWith({ nudges: [nudgeAt(1)] }))
    expect(await night(-365)).toBeGreaterThanOrEqual(1)
    expect(await copies()).toContain(`2025-12-03/${A}.json`)
  }))

it('erases a person everywhere, and nobody else', () =>
  withNights(async (store, night, copies) => {
    await night()
    await store.update(B, () => personWith({ jars: [jarOf('k7f2a', 3)] }))
    await night()
    expect(await store.remove(B)).toEqual({ jars: 1, entries: 3, copies: 2 })
    expect(await copies()).toEqual([`2026-11-26/${A}.json`])
    expect(await night()).toBe(0)
  }))

it('erases what killed writers left of a person too', () =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    await store.update(A, () => personWith({}))
    await store.nightly()
    const left = [join(folder, 'users', `.${A}.1-1.tmp`), join(folder, 'copies', '2026-11-25', `.${A}.1-2.tmp`)]
    for (const path of left) await writeFile(path, '')
    expect(await store.remove(A)).toEqual({ jars: 0, entries: 0, copies: 1 })
    expect(left.filter((path) => existsSync(path))).toEqual([])
    await store.close()
  }))

it('can be put back by hand', () =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    const person = personWith({ jars: [jarOf('k7f2a', 2)] })
    await store.update(A, () => person)
    await store.nightly()
    await store.close()
    const copy = await readFile(join(folder, 'copies', '2026-11-25', `${A}.json`))
    await writeFile(join(folder, 'users', `${A}.json`), copy)
    const again = storeIn(folder)
    expect(await again.read(A)).toEqual(person)
    await again.close()
  }))

it('stops when the store closes', () =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    for (let index = 0; index < 50; index++) await store.update(userId(index), () => personWith({}))
    const copying = store.nightly()
    const rejected = expect(copying).rejects.toMatchObject({ problem: 'closed' })
    await store.close()
    await rejected
    expect(await readdir(join(folder, 'lock'))).toEqual([])
  }))
