import { readFileSync } from 'node:fs'
import { readdir, readFile, unlink, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readStored } from '../../store/schema/read-stored.ts'
import { A, ASIDE, afterLoss, B, FULL } from './after-loss.ts'
import { inFolder } from './in-folder.ts'
import { jarOf, userId } from './some-people.ts'
import { NOW_MS, personIn, restoreCopy, storeIn } from './some-store.ts'

describe('a copy that is put back', () => {
  it('is what was there, and what stood in its place is kept', () =>
    afterLoss(async (folder) => {
      const store = storeIn(folder)
      await store.update(A, (person) => ({ ...person, jars: [jarOf('c3c3c', 1)] }))
      await store.close()
      const aside = `${A}.replaced-2026-11-25T10-30-00-000Z.json`
      expect(await restoreCopy({ folder, nowMs: NOW_MS }, A, '2026-11-25')).toEqual({
        jars: 2,
        entries: 5,
        keptAt: join(folder, 'users', aside),
      })
      const again = storeIn(folder)
      expect(await again.read(A)).toEqual(FULL)
      const kept = personIn(await readFile(join(folder, 'users', aside), 'utf8'))
      expect(kept.jars).toEqual([jarOf('c3c3c', 1)])
      expect(await readdir(join(folder, 'users'))).toContain(ASIDE)
      expect(await again.remove(A)).toEqual({ jars: 2, entries: 5, copies: 3 })
      await again.close()
    }))

  it('is brought to the newest version', () =>
    inFolder(async (folder) => {
      const store = storeIn(folder)
      await store.update(A, () => FULL)
      await store.nightly()
      await store.close()
      const old = readFileSync(new URL('version-1.json', import.meta.url), 'utf8')
      await writeFile(join(folder, 'copies', '2026-11-25', `${A}.json`), old)
      await restoreCopy({ folder, nowMs: NOW_MS }, A, '2026-11-25')
      const read = readStored(old)
      const { person } = read.kind === 'person' ? read : { person: null }
      const put = personIn(await readFile(join(folder, 'users', `${A}.json`), 'utf8'))
      expect(put).toEqual({ ...person, setAside: null })
    }))

  it('can be put back where nothing stands any more', () =>
    afterLoss(async (folder) => {
      await writeFile(join(folder, 'users', 'x'), '')
      await unlink(join(folder, 'users', `${A}.json`))
      expect(await restoreCopy({ folder, nowMs: NOW_MS }, A, '2026-11-25')).toMatchObject({ keptAt: null })
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
