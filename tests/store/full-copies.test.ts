import { readdir, readFile, truncate } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { NOBODY } from '../../store/person.ts'
import { A, ASIDE, afterLoss, B, FULL } from './after-loss.ts'
import { inFolder } from './in-folder.ts'
import { jarOf, nudgeAt, personWith } from './some-people.ts'
import { NOW_MS, personIn, restoreCopy, storeIn } from './some-store.ts'
import { failure, watchedDisk } from './watched-disk.ts'

const DAY_MS = 86_400_000

const copyOf = async (folder: string, day: string) =>
  personIn(await readFile(join(folder, 'copies', day, `${A}.json`), 'utf8'))

describe('the last good copy', () => {
  it('outlives the start that finds the file torn, and is named', () =>
    afterLoss(async (folder) => {
      const logged: string[] = []
      const store = storeIn(folder, { log: (text) => logged.push(text) })
      expect(await store.read(A)).toEqual(personWith({ setAside: { file: ASIDE, day: '2026-11-25' } }))
      await store.nightly()
      await store.update(A, () => personWith({ jars: [jarOf('c3c3c', 1)] }))
      await store.nightly()
      await store.close()
      expect(await copyOf(folder, '2026-11-25')).toEqual(FULL)
      expect(logged).toEqual([
        `store: ${A} could not be read (not a JSON object), set aside as ${ASIDE}; the copy of 2026-11-25 holds most`,
      ])
    }))

  it('is not overwritten by what cannot be read either', () =>
    afterLoss(async (folder) => {
      const store = storeIn(folder)
      expect(await store.nightly()).toBe(0)
      expect(await copyOf(folder, '2026-11-25')).toEqual(FULL)
      await store.close()
      const tomorrow = storeIn(folder, { nowMs: () => NOW_MS + DAY_MS })
      expect(await tomorrow.nightly()).toBe(0)
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
        await store.nightly()
      }
      expect(await copyOf(folder, '2026-11-25')).toEqual(FULL)
      // Nobody else’s copies stay with it.
      expect(await readdir(join(folder, 'copies', '2026-11-25'))).toEqual([`${A}.json`])
      expect(await readdir(join(folder, 'copies'))).toHaveLength(8)
      await store.close()
      await restoreCopy({ folder, nowMs }, A, '2026-11-25')
      nowMs += DAY_MS
      const again = storeIn(folder, { nowMs: () => nowMs })
      await again.nightly()
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
        await store.nightly()
        nowMs += DAY_MS
      }
      await store.close()
      await truncate(join(folder, 'users', `${A}.json`), 40)
      const again = storeIn(folder, { nowMs: () => nowMs })
      expect((await again.read(A)).setAside?.day).toBe('2026-11-27')
      for (let night = 0; night < 12; night++) {
        await again.nightly()
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
        await store.nightly()
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
    await expect(store.nightly()).rejects.toMatchObject({ problem: 'disk_failed' })
    expect(await readdir(join(folder, 'copies', '2026-11-25'))).toEqual([`${B}.json`])
    await store.close()
  }))

it('knows nobody begun anew where there was no file at all', () =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    expect(await store.read(A)).toEqual(NOBODY)
    await store.close()
  }))
