import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { NOBODY } from '../../store/person.ts'
import { inFolder } from './in-folder.ts'
import { KINDS } from './kinds.ts'
import { jarOf, nudgeAt, personWith, userId } from './some-people.ts'
import { NOW_MS } from './some-store.ts'

const A = userId(1)
const B = userId(2)
const DAY_MS = 86_400_000

const withJars = (entries: number) => personWith({ jars: [jarOf('k7f2a', entries)] })

describe.each(KINDS)('whoever runs a store %s', (_, openIn) => {
  it('finds nothing there at first, and looking makes nothing', () =>
    inFolder(async (folder) => {
      const store = openIn(join(folder, 'data'))
      expect(await store.isThere()).toBe(false)
      expect(await store.inspect()).toBeNull()
      expect(await store.read(A)).toEqual(NOBODY)
      expect(await readdir(folder)).toEqual([])
      await store.hold()
      expect(await store.isThere()).toBe(true)
      expect(await store.inspect()).toMatchObject({ people: 0, holder: { pid: process.pid, mayRun: true } })
      await store.close()
      expect(await openIn(join(folder, 'data')).inspect()).toMatchObject({ holder: null })
    }))

  it('finds what was kept after it was closed, and looks on while another works', () =>
    inFolder(async (folder) => {
      const [store, onlooker] = [openIn(folder), openIn(folder)]
      await store.update(A, () => withJars(2))
      expect(await onlooker.read(A)).toEqual(withJars(2))
      await store.update(A, () => withJars(3))
      expect(await onlooker.read(A)).toEqual(withJars(3))
      await store.close()
      expect(await openIn(folder).read(A)).toEqual(withJars(3))
    }))

  it('tells how it is, without a lock', () =>
    inFolder(async (folder) => {
      const store = openIn(folder)
      await store.update(A, () => personWith({ jars: [jarOf('aaaaa', 2), jarOf('bbbbb', 1)] }))
      await store.update(B, () => personWith({ nudges: [nudgeAt(NOW_MS - 5e9)] }))
      await store.nightly()
      expect(await openIn(folder).inspect()).toMatchObject({
        rights: 'own',
        people: 2,
        jars: { running: 2, all: 2 },
        unreadable: 0,
        setAside: 0,
        newestCopy: '2026-11-25',
        nextDueMs: NOW_MS - 5e9,
        status: { kind: 'none' },
      })
      await store.close()
    }))

  it('leaves a status for others, and the last reminder of the process before', () =>
    inFolder(async (folder) => {
      const store = openIn(folder)
      await store.heartbeat({ tickMs: NOW_MS, sentMs: NOW_MS - 1, heardMs: null })
      await store.heartbeat({ tickMs: NOW_MS + 9, sentMs: null, heardMs: NOW_MS + 8 })
      await store.close()
      const { status } = (await openIn(folder).inspect())!
      expect(status).toEqual({
        kind: 'status',
        status: { tickMs: NOW_MS + 9, sentMs: NOW_MS - 1, heardMs: NOW_MS + 8 },
      })
    }))

  it('copies at night whoever changed since the last copy', () =>
    inFolder(async (folder) => {
      let nowMs = NOW_MS
      const store = openIn(folder, { nowMs: () => nowMs })
      await store.update(A, () => withJars(1))
      await store.update(B, () => withJars(1))
      expect([await store.nightly(), await store.nightly()]).toEqual([2, 0])
      nowMs += DAY_MS
      await store.update(B, () => withJars(2))
      expect([await store.nightly(), await store.nightly()]).toEqual([1, 0])
      await store.close()
    }))

  it('puts the copy of a day back, says what it held and that what stood there is kept', () =>
    inFolder(async (folder) => {
      let nowMs = NOW_MS
      const store = openIn(folder, { nowMs: () => nowMs })
      await store.update(A, () => withJars(2))
      await store.nightly()
      nowMs += DAY_MS
      await store.update(A, () => withJars(5))
      await store.nightly()
      await store.update(A, () => NOBODY)
      expect(await store.putBack(A, '2026-11-25')).toEqual({ jars: 1, entries: 2, keptAt: expect.any(String) })
      expect(await store.read(A)).toEqual(withJars(2))
      expect((await store.inspect())!.setAside).toBe(1)
      await store.putBack(A, '2026-11-26')
      await store.close()
      expect(await openIn(folder).read(A)).toEqual(withJars(5))
    }))

  it('makes what a copy asks for due again', () =>
    inFolder(async (folder) => {
      const store = openIn(folder)
      await store.update(A, () => personWith({ nudges: [nudgeAt(100)] }))
      await store.nightly()
      await store.update(A, () => NOBODY)
      expect(await store.claimDue(200, 9, 60)).toEqual([])
      await store.putBack(A, '2026-11-25')
      expect(await store.claimDue(200, 9, 60)).toEqual([A])
      await store.close()
    }))

  it('names the days of which there are copies, where there is none of the day', () =>
    inFolder(async (folder) => {
      let nowMs = NOW_MS
      const store = openIn(folder, { nowMs: () => nowMs })
      for (const entries of [1, 2, 3, 4, 5, 6, 7, 8, 9]) {
        await store.update(A, () => withJars(entries))
        await store.nightly()
        nowMs += DAY_MS
      }
      // Nine nights from the 25th on, of which seven are kept.
      const days = ['03', '02', '01']
        .map((day) => `2026-12-${day}`)
        .concat(['30', '29', '28', '27'].map((day) => `2026-11-${day}`))
      await expect(store.putBack(A, '2026-11-26')).rejects.toMatchObject({ problem: 'no_copy', values: { days } })
      await expect(store.putBack(B, '2026-12-03')).rejects.toMatchObject({ problem: 'no_copy', values: { days: [] } })
      await expect(store.putBack('../local', '2026-12-03')).rejects.toMatchObject({ problem: 'bad_user_id' })
      expect(await store.read(A)).toEqual(withJars(9))
      await store.close()
    }))

  it('erases a person from the copies too, and counts them', () =>
    inFolder(async (folder) => {
      let nowMs = NOW_MS
      const store = openIn(folder, { nowMs: () => nowMs })
      for (const entries of [1, 2]) {
        await store.update(A, () => withJars(entries))
        await store.update(B, () => withJars(entries))
        await store.nightly()
        nowMs += DAY_MS
      }
      expect(await store.remove(A)).toEqual({ jars: 1, entries: 2, copies: 2 })
      await expect(store.putBack(A, '2026-11-26')).rejects.toMatchObject({ problem: 'no_copy', values: { days: [] } })
      expect(await store.putBack(B, '2026-11-25')).toMatchObject({ entries: 1 })
      expect(await store.remove(B)).toEqual({ jars: 1, entries: 1, copies: 3 })
      expect(await store.inspect()).toMatchObject({ people: 0, setAside: 0 })
      await store.close()
    }))

  it('does nothing any more once it is closed', () =>
    inFolder(async (folder) => {
      const store = openIn(folder)
      await store.close()
      const status = { tickMs: NOW_MS, sentMs: null, heardMs: null }
      for (const call of [
        store.isThere(),
        store.hold(),
        store.nightly(),
        store.heartbeat(status),
        store.putBack(A, '2026-11-25'),
      ]) {
        await expect(call).rejects.toMatchObject({ code: 'storage', problem: 'closed' })
      }
      expect(await readdir(folder)).toEqual([])
    }))
})
