import { chmod, mkdir, stat } from 'node:fs/promises'
import { expect, it } from 'vitest'
import { nodeDisk } from '../../store/disk/disk.ts'
import { inFolder } from './in-folder.ts'
import { jarOf, nudgeAt, personWith, userId } from './some-people.ts'
import { storeIn } from './some-store.ts'
import { type Call, failure, watchedDisk } from './watched-disk.ts'

const A = userId(1)
const PERSON = personWith({ jars: [jarOf('k7f2a', 2)], nudges: [nudgeAt(5)] })

/** The calls of `work` on a store that has its folder already. */
const callsOf = (work: (store: ReturnType<typeof storeIn>) => Promise<unknown>): Promise<readonly Call[]> =>
  inFolder(async (folder) => {
    const calls: Call[] = []
    const store = storeIn(folder, { disk: watchedDisk((...call) => calls.push(call)) })
    await store.update(A, () => personWith({}))
    await store.claimDue(0, 1, 1)
    calls.length = 0
    await work(store)
    const done = [...calls]
    await store.close()
    return done
  })

/** What the claim about a power cut rests on: text durable, then the name, then the name durable, and only then the answer. */
const WRITE = [
  ['readlink', `${A}.json`],
  ['create', `.${A}.tmp`],
  ['writeFile', `.${A}.tmp`],
  ['sync', `.${A}.tmp`],
  ['close', `.${A}.tmp`],
  ['rename', `.${A}.tmp`, `${A}.json`],
]

it('writes a change durably before it answers', async () => {
  expect(await callsOf((store) => store.update(A, () => PERSON))).toEqual([...WRITE, ['syncFolder', 'users']])
})

it('touches nothing where there is nothing to change, and serves reads and ticks from memory', async () => {
  const work = async (store: ReturnType<typeof storeIn>) => {
    await store.update(A, () => null)
    await store.read(A)
    await store.claimDue(1e13, 9, 1)
  }
  expect(await callsOf(work)).toEqual([])
})

it('writes once more what may not be durable, at the next change that comes to nothing, and then no more', () =>
  inFolder(async (folder) => {
    const calls: Call[] = []
    let isFailing = true
    const disk = watchedDisk((...call) => {
      calls.push(call)
      if (isFailing && call[0] === 'syncFolder' && calls.some(([name]) => name === 'rename')) throw failure('EIO')
    })
    const store = storeIn(folder, { disk })
    await expect(store.update(A, () => PERSON)).rejects.toMatchObject({ problem: 'unsure', values: { code: 'EIO' } })
    isFailing = false
    await store.read(A)
    calls.length = 0
    expect(await store.update(A, () => null)).toEqual(PERSON)
    expect(calls).toEqual([...WRITE, ['syncFolder', 'users']])
    calls.length = 0
    await store.update(A, () => null)
    expect(calls).toEqual([])
    await store.close()
  }))

it('makes a copy durable too', async () => {
  const calls = await callsOf((store) => store.nightly())
  const first = calls.findIndex(([name]) => name === 'create') - 1
  expect(calls.slice(first)).toEqual([...WRITE, ['syncFolder', '2026-11-25']])
})

it('makes it durable that a person is gone, the file itself last', async () => {
  const calls = await callsOf(async (store) => {
    await store.nightly()
    await store.remove(A)
  })
  expect(calls.slice(-7)).toEqual([
    ['readdir', '2026-11-25'],
    ['unlink', `${A}.json`],
    ['syncFolder', '2026-11-25'],
    ['readdir', 'users'],
    ['readlink', `${A}.json`],
    ['unlink', `${A}.json`],
    ['syncFolder', 'users'],
  ])
})

it('keeps folders and files to their owner', () =>
  inFolder(async (folder) => {
    await mkdir(`${folder}/data/users`, { recursive: true })
    await chmod(`${folder}/data/users`, 0o755)
    const store = storeIn(`${folder}/data`)
    await store.update(A, () => PERSON)
    await store.nightly()
    const modeOf = async (path: string) => (await stat(`${folder}/data/${path}`)).mode & 0o777
    for (const path of ['users', 'copies', 'copies/2026-11-25', 'lock']) expect(await modeOf(path)).toBe(0o700)
    for (const path of [`users/${A}.json`, `copies/2026-11-25/${A}.json`]) expect(await modeOf(path)).toBe(0o600)
    await store.close()
  }))

it('makes nothing until somebody writes', () =>
  inFolder(async (folder) => {
    const store = storeIn(`${folder}/data`)
    expect(await store.read(A)).toEqual(personWith({}))
    await store.close()
    expect(await nodeDisk.readdir(folder)).toEqual([])
  }))
