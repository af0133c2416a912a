import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { memoryStore } from '../../store/memory/memory-store.ts'
import { NOBODY } from '../../store/person.ts'
import type { Store } from '../../store/store.ts'
import { runs, SEED } from '../runs.ts'
import { inFolder } from './in-folder.ts'
import { KINDS } from './kinds.ts'
import { jarOf, nudgeAt, personWith, userId } from './some-people.ts'

const A = userId(1)
const B = userId(2)

type WithStore = (work: (store: Store) => Promise<void>) => Promise<void>

const kept: readonly (readonly [string, WithStore])[] = KINDS.map(([name, openIn]) => [
  name,
  (work) =>
    inFolder(async (folder) => {
      const store = openIn(folder)
      await work(store)
      await store.close()
    }),
])

const inMemory: WithStore = (work) => work(memoryStore('Europe/Rome'))

describe.each([...kept, ['in memory', inMemory] as const])('the store %s', (_, withStore) => {
  it('knows nobody at first', () => withStore(async (store) => expect(await store.read(A)).toEqual(NOBODY)))

  it('answers with what it stored, and reads it again', () =>
    withStore(async (store) => {
      const person = personWith({ jars: [jarOf('k7f2a', 3)] })
      expect(await store.update(A, () => person)).toEqual(person)
      expect(await store.read(A)).toEqual(person)
      expect(await store.read(B)).toEqual(NOBODY)
    }))

  it('changes nothing where there is nothing to change', () =>
    withStore(async (store) => {
      await store.update(A, () => personWith({ jars: [jarOf('k7f2a', 1)] }))
      expect(await store.update(A, () => null)).toEqual(personWith({ jars: [jarOf('k7f2a', 1)] }))
    }))

  it('lets out what a change throws, and changes nothing', () =>
    withStore(async (store) => {
      const refuse = (): never => {
        throw new RangeError('no')
      }
      await expect(store.update(A, refuse)).rejects.toThrow(RangeError)
      expect(await store.read(A)).toEqual(NOBODY)
      await store.update(A, () => personWith({ jars: [jarOf('k7f2a', 1)] }))
      expect((await store.read(A)).jars).toHaveLength(1)
    }))

  it('refuses what it could not read again, and changes nothing', () =>
    withStore(async (store) => {
      const broken = personWith({ nudges: [nudgeAt(Number.NaN)] })
      await expect(store.update(A, () => broken)).rejects.toThrow('nudges.0')
      expect(await store.read(A)).toEqual(NOBODY)
    }))

  it('makes one change of a person after the other', () =>
    withStore(async (store) => {
      const addOne = () =>
        store.update(A, (person) => ({ ...person, nudges: [...person.nudges, nudgeAt(person.nudges.length)] }))
      await Promise.all(Array.from({ length: 50 }, addOne))
      expect((await store.read(A)).nudges.map(({ nextMs }) => nextMs)).toEqual([...Array(50).keys()])
    }))

  it('keeps more people apart than it keeps in memory', () =>
    withStore(async (store) => {
      const ids = Array.from({ length: 230 }, (_, index) => userId(index))
      const count = (id: string) =>
        store.update(id, ({ nudges }) => personWith({ nudges: [...nudges, nudgeAt(Number(id.slice(-3)))] }))
      await Promise.all(ids.flatMap((id) => [count(id), count(id)]))
      for (const id of ids) {
        expect((await store.read(id)).nudges.map(({ nextMs }) => nextMs)).toEqual(Array(2).fill(Number(id.slice(-3))))
      }
    }))

  it('erases a person and counts what was there', () =>
    withStore(async (store) => {
      await store.update(A, () => personWith({ jars: [jarOf('k7f2a', 3), jarOf('b2b2b', 1)], nudges: [nudgeAt(5)] }))
      expect(await store.remove(A)).toEqual({ jars: 2, entries: 4, copies: 0 })
      expect(await store.read(A)).toEqual(NOBODY)
      expect(await store.claimDue(1e13, 9, 1)).toEqual([])
      expect(await store.remove(A)).toEqual({ jars: 0, entries: 0, copies: 0 })
    }))

  it.each(['', 'Local', '../local', 'local/../x', '1'.repeat(16), '1'.repeat(21), `${A}\n`, '__proto__', `${A}\0`])(
    'takes no other id: %j',
    (id) =>
      withStore(async (store) => {
        for (const call of [store.read(id), store.update(id, (person) => person), store.remove(id)]) {
          await expect(call).rejects.toMatchObject({ code: 'storage', problem: 'bad_user_id' })
        }
      }),
  )

  it('names who is due, the longest overdue first, and leaves them alone for the lease', () =>
    withStore(async (store) => {
      await store.update(A, () => personWith({ nudges: [nudgeAt(100)] }))
      await store.update(B, () => personWith({ nudges: [nudgeAt(50), nudgeAt(900, 'n2')] }))
      await store.update('local', () => personWith({ nudges: [{ ...nudgeAt(1), state: 'kept' }] }))
      expect(await store.claimDue(49, 9, 60)).toEqual([])
      expect(await store.claimDue(100, 1, 60)).toEqual([B])
      expect(await store.claimDue(100, 9, 60)).toEqual([A])
      expect(await store.claimDue(159, 9, 60)).toEqual([])
      expect(await store.claimDue(160, 9, 60)).toEqual([B, A])
    }))

  it('names somebody again as soon as their state changed', () =>
    withStore(async (store) => {
      await store.update(A, () => personWith({ nudges: [nudgeAt(100)] }))
      expect(await store.claimDue(100, 9, 1000)).toEqual([A])
      await store.update(A, () => null)
      expect(await store.claimDue(101, 9, 1000)).toEqual([])
      await store.update(A, () => personWith({ nudges: [nudgeAt(105)] }))
      expect(await store.claimDue(104, 9, 1000)).toEqual([])
      expect(await store.claimDue(105, 9, 1000)).toEqual([A])
    }))

  it('ends the leases of a clock that is set back, which would last until it is there again', () =>
    withStore(async (store) => {
      await store.update(A, () => personWith({ nudges: [nudgeAt(100)] }))
      expect(await store.claimDue(5000, 9, 60)).toEqual([A])
      expect(await store.claimDue(99, 9, 60)).toEqual([])
      expect(await store.claimDue(200, 9, 60)).toEqual([A])
      expect(await store.claimDue(259, 9, 60)).toEqual([])
      expect(await store.claimDue(260, 9, 60)).toEqual([A])
    }))

  it('does nothing any more once it is closed', () =>
    withStore(async (store) => {
      await store.close()
      for (const call of [
        store.read(A),
        store.update(A, (person) => person),
        store.remove(A),
        store.claimDue(1, 1, 1),
      ]) {
        await expect(call).rejects.toMatchObject({ code: 'storage', problem: 'closed' })
      }
      await store.close()
    }))
})

const step = fc.oneof(
  fc.record({ kind: fc.constant('set' as const), who: fc.nat(5), atMs: fc.array(fc.nat(200), { maxLength: 2 }) }),
  fc.record({ kind: fc.constant('remove' as const), who: fc.nat(5) }),
  fc.record({ kind: fc.constant('reopen' as const) }),
  fc.record({ kind: fc.constant('claim' as const), untilMs: fc.nat(250), limit: fc.nat(4), leaseMs: fc.nat(60) }),
)

it.each(KINDS)('%s it names the same people as a plain search does, whatever happens', async (_, openIn) => {
  await fc.assert(
    fc.asyncProperty(fc.array(step, { maxLength: 40 }), (steps) =>
      inFolder(async (folder) => {
        let [disk, memory]: [Store, Store] = [openIn(folder), memoryStore('Europe/Rome')]
        for (const one of steps) {
          if (one.kind === 'reopen') {
            const people = await Promise.all(
              [0, 1, 2, 3, 4, 5].map(async (who) => [who, await disk.read(userId(who))] as const),
            )
            await disk.close()
            disk = openIn(folder)
            // Leases end with the process.
            memory = memoryStore('Europe/Rome')
            for (const [who, person] of people) await memory.update(userId(who), () => person)
          } else if (one.kind === 'claim') {
            const { untilMs, limit, leaseMs } = one
            const named = await disk.claimDue(untilMs, limit, leaseMs)
            expect(named).toEqual(await memory.claimDue(untilMs, limit, leaseMs))
          } else {
            for (const store of [disk, memory]) {
              if (one.kind === 'remove') await store.remove(userId(one.who))
              else {
                const nudges = one.atMs.map((atMs, index) => nudgeAt(atMs, `n${index}`))
                await store.update(userId(one.who), () => personWith({ nudges }))
              }
            }
          }
        }
        await disk.close()
      }),
    ),
    { seed: SEED, numRuns: runs(25, 1000) },
  )
})
