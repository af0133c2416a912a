import { readdir, readFile, truncate, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { NOBODY } from '../../store/person.ts'
import { restoreCopy } from '../../store/restore-copy.ts'
import { inFolder } from './in-folder.ts'
import { jarOf, nudgeAt, personWith, userId } from './some-people.ts'
import { NOW_MS, storeIn } from './some-store.ts'
import { failure, watchedDisk } from './watched-disk.ts'

const [A, B] = [userId(1), userId(2)]
const DAY_MS = 86_400_000
const FULL = personWith({ jars: [jarOf('k7f2a', 3), jarOf('b2b2b', 2)] })
const ASIDE = `${A}.unreadable-2026-11-25T10-30-00-000Z.json`

/** A folder in which A had two jars, was copied, and then lost the file. */
const afterLoss = (work: (folder: string) => Promise<void>): Promise<void> =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    await store.update(A, () => FULL)
    await store.update(B, () => personWith({ nudges: [nudgeAt(5)] }))
    await store.copyNightly()
    await store.close()
    await truncate(join(folder, 'users', `${A}.json`), 40)
    await work(folder)
  })

const copyOf = async (folder: string, day: string) =>
  JSON.parse(await readFile(join(folder, 'copies', day, `${A}.json`), 'utf8'))

describe('the last good copy', () => {
  it('outlives the start that finds the file torn, and is named', () =>
    afterLoss(async (folder) => {
      const logged: string[] = []
      const store = storeIn(folder, { log: (text) => logged.push(text) })
      expect(await store.read(A)).toEqual(personWith({ setAside: { file: ASIDE, day: '2026-11-25' } }))
      await store.copyNightly()
      await store.update(A, () => personWith({ jars: [jarOf('c3c3c', 1)] }))
      await store.copyNightly()
      await store.close()
      expect(await copyOf(folder, '2026-11-25')).toEqual(FULL)
      expect(logged).toEqual([
        `store: ${A} could not be read (not a JSON object), set aside as ${ASIDE}; the copy of 2026-11-25 holds most`,
      ])
    }))

  it('is not overwritten by what cannot be read either', () =>
    afterLoss(async (folder) => {
      const store = storeIn(folder)
      expect(await store.copyNightly()).toBe(0)
      expect(await copyOf(folder, '2026-11-25')).toEqual(FULL)
      await store.close()
      const tomorrow = storeIn(folder, { nowMs: () => NOW_MS + DAY_MS })
      expect(await tomorrow.copyNightly()).toBe(0)
      expect(await readdir(join(folder, 'copies', '2026-11-26'))).toEqual([])
      await tomorrow.close()
    }))

  it('stays for longer than seven days while it is all that is left, and no longer', () =>
    afterLoss(async (folder) => {
      let nowMs = NOW_MS
      const store = storeIn(folder, { nowMs: () => nowMs })
      await store.read(A)
      for (let night = 1; night <= 20; night++) {
        nowMs += DAY_MS
        await store.update(A, () => personWith({ jars: [jarOf('c3c3c', 1)], nudges: [nudgeAt(night)] }))
        await store.copyNightly()
      }
      expect(await copyOf(folder, '2026-11-25')).toEqual(FULL)
      // Nobody else’s copies stay with it.
      expect(await readdir(join(folder, 'copies', '2026-11-25'))).toEqual([`${A}.json`])
      expect(await readdir(join(folder, 'copies'))).toHaveLength(8)
      await store.close()
      await restoreCopy({ folder, nowMs }, A, '2026-11-25')
      nowMs += DAY_MS
      const again = storeIn(folder, { nowMs: () => nowMs })
      await again.copyNightly()
      expect(await readdir(join(folder, 'copies'))).not.toContain('2026-11-25')
      expect(await again.remove(A)).toMatchObject({ jars: 2 })
      await again.close()
    }))

  it('is the latest of several as full that stays', () =>
    inFolder(async (folder) => {
      let nowMs = NOW_MS
      const store = storeIn(folder, { nowMs: () => nowMs })
      for (let night = 0; night < 3; night++) {
        await store.update(A, () => ({ ...FULL, nudges: [nudgeAt(night)] }))
        await store.copyNightly()
        nowMs += DAY_MS
      }
      await store.close()
      await truncate(join(folder, 'users', `${A}.json`), 40)
      const again = storeIn(folder, { nowMs: () => nowMs })
      expect((await again.read(A)).setAside?.day).toBe('2026-11-27')
      for (let night = 0; night < 12; night++) {
        await again.copyNightly()
        nowMs += DAY_MS
      }
      const days = (await readdir(join(folder, 'copies'))).sort()
      expect([days.length, days[0]]).toEqual([8, '2026-11-27'])
      await again.close()
    }))

  it('goes with everything else of a person who is erased', () =>
    afterLoss(async (folder) => {
      let nowMs = NOW_MS
      const store = storeIn(folder, { nowMs: () => nowMs })
      await store.read(A)
      for (let night = 1; night <= 8; night++) {
        nowMs += DAY_MS
        await store.copyNightly()
      }
      expect(await copyOf(folder, '2026-11-25')).toEqual(FULL)
      await store.remove(A)
      await store.close()
      const names = await readdir(folder, { recursive: true })
      expect(names.filter((name) => name.includes(A))).toEqual([])
    }))
})

it('copies everybody else where one file fails, and tells of it at the end', () =>
  inFolder(async (folder) => {
    const disk = watchedDisk((name, path) => {
      if (name === 'readFile' && path === `${A}.json`) throw failure('EIO')
    })
    const before = storeIn(folder)
    await before.update(A, () => FULL)
    await before.update(B, () => FULL)
    await before.close()
    const store = storeIn(folder, { disk })
    await expect(store.copyNightly()).rejects.toMatchObject({ problem: 'disk_failed' })
    expect(await readdir(join(folder, 'copies', '2026-11-25'))).toEqual([`${B}.json`])
    await store.close()
  }))

describe('a copy that is put back', () => {
  it('is what was there, and what stood in its place is kept', () =>
    afterLoss(async (folder) => {
      const store = storeIn(folder)
      await store.update(A, (person) => ({ ...person, jars: [jarOf('c3c3c', 1)] }))
      await store.close()
      const aside = `${A}.replaced-2026-11-25T10-30-00-000Z.json`
      expect(await restoreCopy({ folder, nowMs: NOW_MS }, A, '2026-11-25')).toEqual({ jars: 2, entries: 5, aside })
      const again = storeIn(folder)
      expect(await again.read(A)).toEqual(FULL)
      const kept = JSON.parse(await readFile(join(folder, 'users', aside), 'utf8'))
      expect(kept.jars).toEqual([jarOf('c3c3c', 1)])
      expect(await readdir(join(folder, 'users'))).toContain(ASIDE)
      expect(await again.remove(A)).toEqual({ jars: 2, entries: 5, copies: 3 })
      await again.close()
    }))

  it('is brought to the newest version', () =>
    inFolder(async (folder) => {
      const store = storeIn(folder)
      await store.update(A, () => FULL)
      await store.copyNightly()
      await store.close()
      const old = JSON.stringify({ ...FULL, version: 1, setAside: 'x.json' })
      await writeFile(join(folder, 'copies', '2026-11-25', `${A}.json`), old)
      await restoreCopy({ folder, nowMs: NOW_MS }, A, '2026-11-25')
      expect(JSON.parse(await readFile(join(folder, 'users', `${A}.json`), 'utf8'))).toEqual(FULL)
    }))

  it('can be put back where nothing stands any more', () =>
    afterLoss(async (folder) => {
      await writeFile(join(folder, 'users', 'x'), '')
      const { unlink } = await import('node:fs/promises')
      await unlink(join(folder, 'users', `${A}.json`))
      expect(await restoreCopy({ folder, nowMs: NOW_MS }, A, '2026-11-25')).toMatchObject({ aside: null })
    }))

  it.each([
    ['an id that is none', '../local', '2026-11-25', 'bad_user_id'],
    ['another day', A, '2026-11-24', 'no_copy'],
    ['a day that is none', A, '../users', 'no_copy'],
    ['somebody without a copy', userId(9), '2026-11-25', 'no_copy'],
  ])('is refused for %s', (_, who, day, problem) =>
    afterLoss(async (folder) => {
      await expect(restoreCopy({ folder, nowMs: NOW_MS }, who, day)).rejects.toMatchObject({ problem })
      expect(await readdir(join(folder, 'lock'))).toEqual([])
    }),
  )

  it('names the days of which there are copies', () =>
    afterLoss(async (folder) => {
      await expect(restoreCopy({ folder, nowMs: NOW_MS }, A, '2026-11-24')).rejects.toMatchObject({
        values: { userId: A, day: '2026-11-24', days: ['2026-11-25'] },
      })
    }))

  it('is refused while another works there, and where it cannot be read', () =>
    afterLoss(async (folder) => {
      const store = storeIn(folder)
      await store.update(B, (person) => person)
      await expect(restoreCopy({ folder, nowMs: NOW_MS }, A, '2026-11-25')).rejects.toMatchObject({ problem: 'locked' })
      await store.close()
      await writeFile(join(folder, 'copies', '2026-11-25', `${A}.json`), '{')
      await expect(restoreCopy({ folder, nowMs: NOW_MS }, A, '2026-11-25')).rejects.toMatchObject({
        problem: 'bad_copy',
      })
      expect(await readFile(join(folder, 'users', `${A}.json`), 'utf8')).toHaveLength(40)
    }))

  it('makes no folder where there is none', () =>
    inFolder(async (folder) => {
      const data = join(folder, 'data')
      await expect(restoreCopy({ folder: data, nowMs: NOW_MS }, A, '2026-11-25')).rejects.toMatchObject({
        problem: 'no_copy',
      })
      expect(await readdir(folder)).toEqual([])
    }))
})

it('knows nobody begun anew where there was no file at all', () =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    expect(await store.read(A)).toEqual(NOBODY)
    await store.close()
  }))
