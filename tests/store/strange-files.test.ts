import { execFileSync } from 'node:child_process'
import { lstat, mkdir, open, readdir, readFile, symlink, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { MOST_BYTES } from '../../store/disk/disk.ts'
import { inspectFolder } from '../../store/disk/inspect-folder.ts'
import { inFolder } from './in-folder.ts'
import { jarOf, nudgeAt, personWith, userId } from './some-people.ts'
import { NOW_MS, personIn, storeIn } from './some-store.ts'
import { type Call, watchedDisk } from './watched-disk.ts'

const [A, B] = [userId(1), userId(2)]
const FULL = personWith({ jars: [jarOf('k7f2a', 3)] })

const strange: readonly [what: string, make: (path: string) => Promise<void>, where: string][] = [
  ['a pipe', async (path) => void execFileSync('mkfifo', [path]), 'not a file'],
  ['a folder', async (path) => void (await mkdir(path)), 'not a file'],
  [
    'a file of 600 MB',
    async (path) => {
      // Without a byte of it on the disk.
      const file = await open(path, 'w')
      await file.truncate(600_000_000)
      await file.close()
    },
    'too large',
  ],
]

describe.each(strange)('%s in a person’s place', (_, make, where) => {
  it('is set aside, its person answered, and everybody else reminded and copied', { timeout: 20_000 }, () =>
    inFolder(async (folder) => {
      const before = storeIn(folder)
      await before.update(B, () => personWith({ nudges: [nudgeAt(5)] }))
      await before.close()
      await make(join(folder, 'users', `${A}.json`))
      expect(await inspectFolder(folder, 'UTC')).toMatchObject({ people: 2, unreadable: 1 })
      const logged: string[] = []
      const store = storeIn(folder, { log: (text) => logged.push(text) })
      expect(await store.nightly()).toBe(1)
      expect(await store.claimDue(NOW_MS, 9, 60)).toEqual([B])
      expect(logged).toEqual([expect.stringContaining(`${A} could not be read (${where})`)])
      expect(await store.update(A, () => FULL)).toEqual(FULL)
      expect(await readdir(join(folder, 'users'))).toHaveLength(3)
      await store.close()
    }),
  )
})

it('takes the status for unreadable where it is a pipe', () =>
  inFolder(async (folder) => {
    await mkdir(join(folder, 'users'))
    execFileSync('mkfifo', [join(folder, 'status.json')])
    expect(await inspectFolder(folder, 'UTC')).toMatchObject({ status: { kind: 'unreadable' } })
  }))

it('refuses to write what it could not read again', () =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    const line = '\u20ac'.repeat(100_000)
    const lines = Array.from({ length: Math.ceil(MOST_BYTES / 300_000) }, () => ({ id: '0123456789ab', line }))
    await expect(store.update(A, () => personWith({ lines }))).rejects.toMatchObject({
      problem: 'too_large',
      values: { mostBytes: MOST_BYTES },
    })
    expect(await readdir(join(folder, 'users'))).toEqual([])
    await store.close()
  }))

/** A person's file that is a link to one elsewhere. */
const linked = (work: (folder: string, target: string, path: string) => Promise<void>): Promise<void> =>
  inFolder(async (folder) => {
    const [users, elsewhere] = [join(folder, 'data', 'users'), join(folder, 'elsewhere')]
    await mkdir(users, { recursive: true })
    await mkdir(elsewhere)
    const [target, path] = [join(elsewhere, 'mine.json'), join(users, `${A}.json`)]
    await symlink('../../elsewhere/mine.json', path)
    await work(join(folder, 'data'), target, path)
  })

describe('a link in a person’s place', () => {
  it('stays one, and what it leads to is written, also where nothing was there yet', () =>
    linked(async (folder, target, path) => {
      const store = storeIn(folder)
      await store.update(A, () => FULL)
      await store.update(A, (person) => ({ ...person, nudges: [nudgeAt(5)] }))
      await store.close()
      expect((await lstat(path)).isSymbolicLink()).toBe(true)
      expect(personIn(await readFile(target, 'utf8'))).toEqual({ ...FULL, nudges: [nudgeAt(5)] })
      const again = storeIn(folder)
      expect((await again.read(A)).jars).toEqual(FULL.jars)
      await again.close()
    }))

  it('leads to what is kept when it cannot be read', () =>
    linked(async (folder, target) => {
      await writeFile(target, 'nonsense')
      const store = storeIn(folder)
      const { setAside } = await store.read(A)
      await store.update(A, () => FULL)
      await store.close()
      expect(await readFile(join(folder, 'users', setAside!.file), 'utf8')).toBe('nonsense')
      expect(personIn(await readFile(target, 'utf8'))).toEqual(FULL)
    }))

  it('is kept by a copy where it leads to another disk', () =>
    linked(async (folder, target) => {
      await writeFile(target, 'nonsense')
      const disk = watchedDisk((name) => {
        if (name === 'link') throw Object.assign(new Error('EXDEV'), { code: 'EXDEV' })
      })
      const store = storeIn(folder, { disk })
      const { setAside } = await store.read(A)
      expect(await readFile(join(folder, 'users', setAside!.file), 'utf8')).toBe('nonsense')
      await store.close()
    }))

  it('goes with what it leads to when its person is erased', () =>
    linked(async (folder, target) => {
      const store = storeIn(folder)
      await store.update(A, () => FULL)
      await writeFile(join(target, '..', `.${A}.4711-1.tmp`), '{')
      await writeFile(join(target, '..', 'theirs.txt'), '')
      await store.remove(A)
      await store.close()
      expect(await readdir(join(target, '..'))).toEqual(['theirs.txt'])
      expect(await readdir(join(folder, 'users'))).toEqual([])
    }))

  it('that leads round in a circle is said to fail', () =>
    inFolder(async (folder) => {
      await mkdir(join(folder, 'users'))
      await symlink(`${A}.json`, join(folder, 'users', `${A}.json`))
      const store = storeIn(folder)
      await expect(store.update(A, () => FULL)).rejects.toMatchObject({
        problem: 'disk_failed',
        values: { code: 'ELOOP' },
      })
      await store.close()
    }))
})

it('makes the names of new folders durable, up to the first that was there', () =>
  inFolder(async (folder) => {
    const calls: Call[] = []
    const store = storeIn(join(folder, 'a', 'data'), { disk: watchedDisk((...call) => calls.push(call)) })
    await store.update(A, () => FULL)
    await store.close()
    const made = calls.findIndex(([name, path]) => name === 'mkdir' && path === 'users')
    const synced = calls.slice(made, made + 5).map(([name, path]) => `${name} ${path}`)
    expect(synced).toEqual([
      'mkdir users',
      'chmod users',
      'syncFolder data',
      'syncFolder a',
      `syncFolder ${folder.split('/').at(-1)}`,
    ])
    const first = calls.findIndex(([name]) => name === 'writeFile')
    expect(first).toBeGreaterThan(made + 4)
  }))
