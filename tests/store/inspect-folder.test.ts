import { chmod, mkdir, readdir, readFile, rm, stat, utimes, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { holderName, thisHolder } from '../../store/disk/holder.ts'
import { inspectFolder } from '../../store/disk/inspect-folder.ts'
import { inFolder } from './in-folder.ts'
import { jarOf, nudgeAt, personWith, userId } from './some-people.ts'
import { NOW_MS, storeIn } from './some-store.ts'

const ZONE = 'Europe/Rome'

/** Every file with its time and text. */
const whole = async (folder: string) => {
  const names = (await readdir(folder, { recursive: true, withFileTypes: true })).filter((entry) => entry.isFile())
  const all = names.map(async ({ parentPath, name }) => {
    const path = join(parentPath, name)
    return [path, (await stat(path)).mtimeMs, await readFile(path, 'utf8')]
  })
  return (await Promise.all(all)).sort()
}

it('knows nothing of a folder that is not there, and makes none', () =>
  inFolder(async (folder) => {
    expect(await inspectFolder(join(folder, 'data'), ZONE)).toBeNull()
    expect(await readdir(folder)).toEqual([])
  }))

it('counts people, jars, copies and what was set aside, while another works there, and changes nothing', () =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    await store.update(userId(1), () => personWith({ jars: [jarOf('aaaaa', 2), jarOf('bbbbb', 1)] }))
    await store.update(userId(2), () => personWith({ nudges: [{ ...nudgeAt(NOW_MS + 5), state: 'waiting' }] }))
    await store.nightly()
    await store.heartbeat({ tickMs: NOW_MS, sentMs: null, heardMs: null })
    await writeFile(join(folder, 'users', `${userId(3)}.json`), 'nonsense')
    await writeFile(join(folder, 'users', `${userId(3)}.unreadable-2026-11-25T10-30-00-000Z.json`), 'older nonsense')
    const before = await whole(folder)
    const facts = await inspectFolder(folder, ZONE)
    expect(await whole(folder)).toEqual(before)
    expect(facts).toMatchObject({
      rights: 'own',
      holder: { pid: process.pid, isHere: true, mayRun: true },
      people: 3,
      jars: { running: 2, all: 2 },
      unreadable: 1,
      setAside: 1,
      newestCopy: '2026-11-25',
      status: { kind: 'status', status: { tickMs: NOW_MS, sentMs: null, heardMs: null } },
    })
    expect(facts!.nextDueMs).toBeLessThanOrEqual(NOW_MS + 5)
    await store.close()
    expect((await inspectFolder(folder, ZONE))!.holder).toBeNull()
  }))

it('tells whom the folder is held by: one that runs before one that is gone, and another machine’s as unknown', () =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    await store.update(userId(1), () => personWith({}))
    await store.close()
    const here = thisHolder()
    const put = async (holder: typeof here): Promise<string> => {
      const path = join(folder, 'lock', holderName(holder))
      await writeFile(path, '')
      await utimes(path, NOW_MS / 1000, NOW_MS / 1000)
      return path
    }
    const gone = { ...here, started: `1${here.started ?? ''}` }
    await put(gone)
    expect((await inspectFolder(folder, ZONE))!.holder).toMatchObject({ mayRun: false, isHere: true, sinceMs: NOW_MS })
    const far = await put({ ...here, host: 'shed', pid: 7 })
    expect((await inspectFolder(folder, ZONE))!.holder).toMatchObject({ mayRun: true, isHere: false, pid: 7 })
    await rm(far)
    await put({ ...here, count: 9999 })
    expect((await inspectFolder(folder, ZONE))!.holder).toMatchObject({ mayRun: true, isHere: true })
    // It was looked at, not taken away.
    expect(await readdir(join(folder, 'lock'))).toContain(holderName(gone))
  }))

it('sees whether others may look in', () =>
  inFolder(async (folder) => {
    await mkdir(join(folder, 'users'))
    await chmod(join(folder, 'users'), 0o755)
    expect((await inspectFolder(folder, ZONE))!.rights).toBe('shared')
    await chmod(join(folder, 'users'), 0o700)
    expect((await inspectFolder(folder, ZONE))!.rights).toBe('own')
    // Root may do everything.
    if (process.getuid?.() === 0) return
    await chmod(join(folder, 'users'), 0o500)
    expect((await inspectFolder(folder, ZONE))!.rights).toBe('read_only')
    await chmod(join(folder, 'users'), 0)
    await expect(inspectFolder(folder, ZONE)).rejects.toMatchObject({ problem: 'no_rights' })
    await chmod(join(folder, 'users'), 0o700)
  }))
