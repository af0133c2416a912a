import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import type { SetAside } from '../../store/person.ts'
import type { StorageError } from '../../store/storage-error.ts'
import { inFolder } from './in-folder.ts'
import { jarOf, nudgeAt, personWith, userId } from './some-people.ts'
import { NOW_MS, storeIn } from './some-store.ts'
import { failure, watchedDisk } from './watched-disk.ts'

const A = userId(1)
const B = userId(2)
const NONSENSE = '{"version":1,"settings":'
const ASIDE = `${A}.unreadable-2026-11-25T10-30-00-000Z.json`

/** A folder in which B is well and A is whatever `text` says. */
const withFile = (text: string, work: (folder: string, users: string) => Promise<void>): Promise<void> =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    await store.update(B, () => personWith({ nudges: [nudgeAt(5)] }))
    await store.close()
    const users = join(folder, 'users')
    await writeFile(join(users, `${A}.json`), text)
    await work(folder, users)
  })

it('sets aside what cannot be read, tells its owner, and goes on', () =>
  withFile(NONSENSE, async (folder, users) => {
    const logged: string[] = []
    const store = storeIn(folder, { log: (text) => logged.push(text) })
    expect(await store.read(A)).toEqual(personWith({ setAside: { file: ASIDE, day: null } }))
    expect(await readFile(join(users, ASIDE), 'utf8')).toBe(NONSENSE)
    expect(logged).toEqual([
      `store: ${A} could not be read (not a JSON object), set aside as ${ASIDE}; no copy of it holds a jar`,
    ])
    await store.update(A, (person) => ({ ...person, jars: [jarOf('k7f2a', 1)], setAside: null }))
    await store.close()
    const again = storeIn(folder)
    expect(await again.read(A)).toEqual(personWith({ jars: [jarOf('k7f2a', 1)] }))
    expect(await again.read(B)).toEqual(personWith({ nudges: [nudgeAt(5)] }))
    await again.close()
  }))

it('tells whoever is there to read it instead of logging', () =>
  withFile(NONSENSE, async (folder) => {
    const [logged, told]: [string[], SetAside[]] = [[], []]
    const store = storeIn(folder, { log: (text) => logged.push(text), tellSetAside: (aside) => told.push(aside) })
    await store.read(A)
    expect([logged, told]).toEqual([[], [{ file: ASIDE, day: null }]])
    await store.close()
  }))

it('sets aside a second file of the same moment under a name of its own', () =>
  withFile(NONSENSE, async (folder, users) => {
    const store = storeIn(folder)
    await store.read(A)
    await store.close()
    await writeFile(join(users, `${A}.json`), '[]')
    const again = storeIn(folder)
    expect((await again.read(A)).setAside?.file).toBe(ASIDE.replace('.json', '-1.json'))
    expect(await readFile(join(users, ASIDE), 'utf8')).toBe(NONSENSE)
    expect(await again.remove(A)).toEqual({ jars: 0, entries: 0, copies: 2 })
    expect(await readdir(users)).toEqual([`${B}.json`])
    await again.close()
  }))

it('finds it while it looks for who is due, and names everybody else', () =>
  withFile(NONSENSE, async (folder) => {
    const store = storeIn(folder)
    expect(await store.claimDue(NOW_MS, 9, 60)).toEqual([B])
    expect((await store.read(A)).setAside?.file).toBe(ASIDE)
    await store.close()
  }))

it('leaves a newer version as it is, whatever is asked', () =>
  withFile('{"version":9,"jars":[]}', async (folder, users) => {
    const store = storeIn(folder)
    const path = join(users, `${A}.json`)
    const newer = { problem: 'newer_version', values: { path, version: 9, known: 8 } }
    await expect(store.read(A)).rejects.toMatchObject(newer)
    await expect(store.update(A, (person) => person)).rejects.toMatchObject(newer)
    await expect(store.remove(A)).rejects.toMatchObject(newer)
    expect(await store.claimDue(NOW_MS, 9, 60)).toEqual([B])
    expect(await readFile(path, 'utf8')).toBe('{"version":9,"jars":[]}')
    await store.close()
  }))

it('sets aside again after a crash in between', () =>
  withFile(NONSENSE, async (folder, users) => {
    let crashes = false
    const disk = watchedDisk((name) => {
      if (name === 'create' && crashes) throw failure('EIO')
    })
    const dying = storeIn(folder, { disk })
    await dying.update(B, (person) => person)
    crashes = true
    await expect(dying.read(A)).rejects.toMatchObject({ problem: 'disk_failed' })
    crashes = false
    expect((await dying.read(A)).setAside?.file).toBe(ASIDE.replace('.json', '-1.json'))
    expect(await readFile(join(users, ASIDE), 'utf8')).toBe(NONSENSE)
    await dying.close()
  }))

it('sets aside where a file cannot have two names', () =>
  withFile(NONSENSE, async (folder, users) => {
    const disk = watchedDisk((name) => {
      if (name === 'link') throw failure('EPERM')
    })
    const store = storeIn(folder, { disk })
    expect((await store.read(A)).setAside?.file).toBe(ASIDE)
    expect(await readFile(join(users, ASIDE), 'utf8')).toBe(NONSENSE)
    await store.close()
  }))

it('says so where it cannot be set aside', () =>
  withFile(NONSENSE, async (folder, users) => {
    const path = join(users, `${A}.json`)
    const disk = watchedDisk((name) => {
      if (name === 'link') throw failure('ENOSPC')
    })
    const store = storeIn(folder, { disk })
    const error: StorageError = await store.read(A).catch((caught) => caught)
    expect(error).toMatchObject({ problem: 'unreadable', values: { path, userId: A, day: null } })
    const elsewhere = storeIn(folder)
    await expect(elsewhere.read(A)).rejects.toMatchObject({
      problem: 'unreadable',
      values: { path, userId: A, day: null },
    })
    expect(await readFile(path, 'utf8')).toBe(NONSENSE)
    await store.close()
    await elsewhere.close()
  }))

it('sweeps what killed writers left, and nothing else', () =>
  inFolder(async (folder) => {
    const users = join(folder, 'users')
    const theirs = ['notes.txt', '.secret.tmp', `.${A}.tmp`, `${A}.json.bak`, '12.json']
    await mkdir(users)
    for (const name of [...theirs, `.${A}.4711-3.tmp`, '.local.4711-1.tmp']) await writeFile(join(users, name), '{')
    const store = storeIn(folder)
    await store.read(A)
    expect(await readdir(users)).toHaveLength(theirs.length + 2)
    expect(await store.claimDue(NOW_MS, 9, 60)).toEqual([])
    expect((await readdir(users)).sort()).toEqual(theirs.sort())
    await store.close()
  }))
