import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { type Disk, nodeDisk } from '../../store/disk/disk.ts'
import { runs } from '../runs.ts'
import { inFolder } from './in-folder.ts'
import { userId } from './some-people.ts'
import { personIn, storeIn } from './some-store.ts'
import { A, namedAt, PERSON, withFile } from './stamped-file.ts'
import { forged, stampHolds } from './stamps.ts'
import { failure, watchedDisk } from './watched-disk.ts'

const isLong = runs(0, 1) === 1

const unsynced: Disk['create'] = async (path, mode) => {
  const file = await nodeDisk.create(path, mode)
  return { writeFile: (content) => file.writeFile(content), sync: async () => {}, close: () => file.close() }
}

const night = async (folder: string, rules: string | null, disk = nodeDisk): Promise<void> => {
  const store = storeIn(folder, { rules, disk })
  await store.nightly()
  await store.close()
}

it('gives the stamps of other rules anew at night, and copies what it wrote', () =>
  withFile(PERSON, async (path, folder) => {
    await writeFile(path, forged(await readFile(path, 'utf8'), 5000))
    await night(folder, 'today')
    expect(await namedAt(folder, 4999)).toEqual([])
    await night(folder, 'tomorrow')
    const text = await readFile(path, 'utf8')
    expect([stampHolds(text), personIn(text)]).toEqual([true, PERSON])
    expect(await readFile(join(folder, 'copies', '2026-11-25', `${A}.json`), 'utf8')).toBe(text)
    await writeFile(path, forged(text, 7000))
    expect(await namedAt(folder, 6999, { rules: 'tomorrow' })).toEqual([])
    expect(await namedAt(folder, 100, { rules: 'today' })).toEqual([A])
  }))

it('leaves every file as it is where the rules have no name, or the file is not ours to write', () =>
  withFile(PERSON, async (path, folder) => {
    const before = await readFile(path)
    await night(folder, null)
    expect(await readFile(path)).toEqual(before)
    for (const text of ['nonsense', '{"version":99}', '{"version":4}']) {
      await writeFile(path, text)
      await night(folder, 'tomorrow')
      expect(await readFile(path, 'utf8')).toBe(text)
      expect(await readdir(join(folder, 'users'))).toEqual([`${A}.json`])
    }
  }))

it('copies although the disk refuses a new stamp', () =>
  withFile(PERSON, async (path, folder) => {
    const before = await readFile(path, 'utf8')
    let isFirst = true
    const disk = watchedDisk((name) => {
      if (name !== 'writeFile' || !isFirst) return
      isFirst = false
      throw failure('EIO')
    })
    await night(folder, 'tomorrow', disk)
    expect(await readFile(path, 'utf8')).toBe(before)
    expect(await readFile(join(folder, 'copies', '2026-11-25', `${A}.json`), 'utf8')).toBe(before)
  }))

it.runIf(isLong)('writes a thousand files a night and no more', { timeout: 60_000 }, () =>
  withFile(PERSON, async (path) => {
    const text = await readFile(path, 'utf8')
    const people = Array.from({ length: 1002 }, (_, index) => userId(index + 2))
    await inFolder(async (many) => {
      const pathOf = (id: string): string => join(many, 'users', `${id}.json`)
      await mkdir(join(many, 'users'))
      await Promise.all(people.map((id) => writeFile(pathOf(id), text)))
      // Durability is slow, and not what this is about.
      await night(many, 'tomorrow', { ...nodeDisk, create: unsynced, syncFolder: async () => {} })
      const all = await Promise.all(people.map((id) => readFile(pathOf(id), 'utf8')))
      expect(all.filter((one) => one === text)).toHaveLength(2)
    })
  }),
)
