import { readFile, stat, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { nodeDisk } from '../../store/disk/disk.ts'
import { foldersIn } from '../../store/disk/folders.ts'
import { readStatus } from '../../store/disk/status.ts'
import { inFolder } from './in-folder.ts'
import { NOW_MS, storeIn } from './some-store.ts'

const read = (folder: string) => readStatus(nodeDisk, foldersIn(folder))

it('is read as it was recorded, and what was sent before a restart is kept', () =>
  inFolder(async (folder) => {
    expect(await read(folder)).toEqual({ kind: 'none' })
    const first = storeIn(folder)
    await first.heartbeat({ tickMs: NOW_MS, sentMs: null, heardMs: null })
    expect(await read(folder)).toEqual({ kind: 'status', status: { tickMs: NOW_MS, sentMs: null, heardMs: null } })
    await first.heartbeat({ tickMs: NOW_MS + 1, sentMs: NOW_MS, heardMs: null })
    await first.close()
    const second = storeIn(folder)
    await second.heartbeat({ tickMs: NOW_MS + 2, sentMs: null, heardMs: null })
    expect(await read(folder)).toEqual({
      kind: 'status',
      status: { tickMs: NOW_MS + 2, sentMs: NOW_MS, heardMs: null },
    })
    await second.close()
  }))

it('is its owner’s alone, and no left temporary is in its way', () =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    await store.heartbeat({ tickMs: NOW_MS, sentMs: null, heardMs: null })
    await writeFile(join(folder, '.status.tmp'), 'half')
    await store.heartbeat({ tickMs: NOW_MS + 1, sentMs: null, heardMs: null })
    await store.close()
    expect((await stat(join(folder, 'status.json'))).mode & 0o777).toBe(0o600)
    expect(JSON.parse(await readFile(join(folder, 'status.json'), 'utf8')).tickMs).toBe(NOW_MS + 1)
  }))

it('is not written by two processes, nor after closing', () =>
  inFolder(async (folder) => {
    const [one, other] = [storeIn(folder), storeIn(folder)]
    await one.heartbeat({ tickMs: NOW_MS, sentMs: null, heardMs: null })
    await expect(other.heartbeat({ tickMs: 1, sentMs: null, heardMs: null })).rejects.toMatchObject({
      problem: 'locked',
    })
    await one.close()
    await expect(one.heartbeat({ tickMs: 1, sentMs: null, heardMs: null })).rejects.toMatchObject({
      problem: 'closed',
    })
    await other.close()
  }))

it.each([
  '',
  'nonsense',
  '[]',
  '{"version":1,"tickMs":"soon","sentMs":null}',
  '{"version":1,"tickMs":1e300,"sentMs":null}',
  '{"version":1,"tickMs":-1,"sentMs":null}',
  '{"version":2,"tickMs":1,"sentMs":null}',
  '{"version":2,"tickMs":1,"sentMs":null,"heardMs":"now"}',
  '{"version":1,"tickMs":1,"sentMs":null,"heardMs":null}',
  '{"version":3,"tickMs":1,"sentMs":null,"heardMs":null}',
  '{"version":1,"tickMs":1}',
])('is unreadable as %j, and mended by the next record', (text) =>
  inFolder(async (folder) => {
    await writeFile(join(folder, 'status.json'), text)
    expect(await read(folder)).toEqual({ kind: 'unreadable' })
    const store = storeIn(folder)
    await store.heartbeat({ tickMs: NOW_MS, sentMs: null, heardMs: null })
    await store.close()
    expect(await read(folder)).toMatchObject({ kind: 'status' })
  }),
)

it('tells when Discord was heard of, and is read as the first version wrote it, which did not', () =>
  inFolder(async (folder) => {
    const store = storeIn(folder)
    await store.heartbeat({ tickMs: NOW_MS, sentMs: null, heardMs: NOW_MS - 1 })
    await store.close()
    expect(await read(folder)).toMatchObject({ status: { heardMs: NOW_MS - 1 } })
    await writeFile(join(folder, 'status.json'), '{"version":1,"tickMs":7,"sentMs":5}')
    expect(await read(folder)).toEqual({ kind: 'status', status: { tickMs: 7, sentMs: 5, heardMs: null } })
  }))
