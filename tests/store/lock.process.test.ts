import { mkdir, readdir, rm, writeFile } from 'node:fs/promises'
import { hostname } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type Holder, holderName, holderOf, mayStillRun, thisHolder } from '../../store/disk/holder.ts'
import { NOBODY } from '../../store/person.ts'
import { runs } from '../runs.ts'
import { type Child, startChild } from './child.ts'
import { inFolder } from './in-folder.ts'
import { storeIn } from './some-store.ts'

const PROGRAM = fileURLToPath(new URL('lock-child.ts', import.meta.url))
const CHILDREN = 4

let children: readonly Child[] = []

beforeAll(async () => {
  children = Array.from({ length: CHILDREN }, () => startChild(PROGRAM, []))
  for (const child of children) await child.ask('close')
})

afterAll(async () => {
  for (const child of children) await child.kill()
})

/** Above the largest that Linux gives a process. */
const NO_PID = 4_194_305

const leave = async (folder: string, holder: Holder): Promise<void> => {
  await mkdir(join(folder, 'lock'))
  await writeFile(join(folder, 'lock', holderName(holder)), '')
}

const here = thisHolder()

const update = async (folder: string): Promise<void> => {
  const store = storeIn(folder)
  try {
    await store.update('local', (person) => person)
  } finally {
    await store.close()
  }
}

it('lets one process write and the others read, until it closes', () =>
  inFolder(async (folder) => {
    const [one, other] = children
    expect(await one!.ask(`take ${folder}`)).toBe('taken')
    expect(await other!.ask(`take ${folder}`)).toBe('locked')
    const store = storeIn(folder)
    expect((await store.read('local')).version).toBe(NOBODY.version)
    const values = { folder, host: encodeURIComponent(hostname()), pid: one!.pid, isHere: true }
    await expect(store.update('local', () => null)).rejects.toMatchObject({ problem: 'locked', values })
    await expect(store.claimDue(1, 1, 1)).rejects.toMatchObject({ problem: 'locked' })
    await expect(store.remove('local')).rejects.toMatchObject({ problem: 'locked' })
    await one!.ask('close')
    await store.update('local', (person) => person)
    expect(await other!.ask(`take ${folder}`)).toBe('locked')
    await store.close()
    expect(await other!.ask(`take ${folder}`)).toBe('taken')
    await other!.ask('close')
    expect(await readdir(join(folder, 'lock'))).toEqual([])
  }))

it('shows a reader without the lock what another process writes', () =>
  inFolder(async (folder) => {
    const [writer, reader] = [storeIn(folder), storeIn(folder)]
    for (const atMinutes of [1, 2, 3]) {
      await writer.update('local', (person) => ({ ...person, settings: { ...person.settings, atMinutes } }))
      expect((await reader.read('local')).settings.atMinutes).toBe(atMinutes)
    }
    await writer.close()
    await reader.close()
  }))

it('takes the folder from a process that was killed', () =>
  inFolder(async (folder) => {
    const child = startChild(PROGRAM, [])
    expect(await child.ask(`take ${folder}`)).toBe('taken')
    await expect(update(folder)).rejects.toMatchObject({ problem: 'locked' })
    await child.kill()
    await update(folder)
  }))

it.each<[string, Partial<Holder>]>([
  ['a process that is gone', { pid: NO_PID }],
  ['a process whose number another one has now', { started: '1' }],
  ['a process of before the machine started anew', { boot: '00000000-0000-0000-0000-000000000000' }],
])('takes the folder from %s', (_, parts) =>
  inFolder(async (folder) => {
    await leave(folder, { ...here, count: 0, ...parts })
    await update(folder)
    expect(await readdir(join(folder, 'lock'))).toEqual([])
  }),
)

it('never takes it from another host', () =>
  inFolder(async (folder) => {
    await leave(folder, { ...here, host: 'shed', pid: NO_PID, boot: '00000000-0000-0000-0000-000000000000' })
    const values = { folder, host: 'shed', pid: NO_PID, isHere: false }
    await expect(update(folder)).rejects.toMatchObject({ problem: 'locked', values })
    expect(await readdir(join(folder, 'lock'))).toHaveLength(1)
  }))

it.each<[string, Partial<Holder>]>([
  ['another container of this host’s name', { namespace: '1' }],
  ['this host under the name it had before', { host: 'shed' }],
])('does not believe a process gone that is of %s', (_, parts) =>
  inFolder(async (folder) => {
    const left = { ...here, count: 0, pid: NO_PID, ...parts }
    await leave(folder, left)
    const values = { folder, host: left.host, pid: NO_PID, isHere: false }
    await expect(update(folder)).rejects.toMatchObject({ problem: 'locked', values })
    expect(await readdir(join(folder, 'lock'))).toEqual([holderName(left)])
    // What the sentence says helps.
    await rm(join(folder, 'lock', holderName(left)))
    await update(folder)
  }),
)

it('judges the name that an older Larderbell put up, which tells of no namespace', () =>
  inFolder(async (folder) => {
    const older = `${here.pid}_1_1_${here.boot}_${here.host}`
    expect(holderOf(older)).toMatchObject({ namespace: null, started: '1', host: here.host })
    await mkdir(join(folder, 'lock'))
    await writeFile(join(folder, 'lock', older), '')
    await update(folder)
    expect(await readdir(join(folder, 'lock'))).toEqual([])
  }))

it('believes a process to be there where neither its start nor the machine can be asked', () => {
  const unknown = { ...here, started: null, boot: null }
  expect(mayStillRun(unknown, here)).toBe(true)
  expect(mayStillRun({ ...unknown, pid: NO_PID }, here)).toBe(false)
})

it.each<Partial<Holder>>([{}, { started: null, boot: null, namespace: null }, { host: 'a_b.c-d%20' }])(
  'reads its own names: %j',
  (parts) => {
    const holder: Holder = { ...here, ...parts }
    expect(holderOf(holderName(holder))).toEqual(holder)
  },
)

it('takes nothing else in the folder for a process', () => {
  for (const name of ['', 'lock', '.1_1_1_a_b.swp', '1_1_x_a_b', '1_1_1_a_', '99999999999_1_1_a_b']) {
    expect(holderOf(name)).toBe(null)
  }
})

it('gives a folder that a dead process held to one of many at most', async () => {
  let taken = 0
  const rounds = runs(25, 300)
  for (let round = 0; round < rounds; round++) {
    await inFolder(async (folder) => {
      await leave(folder, { ...here, pid: NO_PID })
      const answers = await Promise.all(children.map((child) => child.ask(`take ${folder}`)))
      expect(answers.filter((answer) => answer !== 'locked' && answer !== 'taken')).toEqual([])
      const winners = answers.filter((answer) => answer === 'taken').length
      expect(winners).toBeLessThanOrEqual(1)
      taken += winners
      for (const child of children) await child.ask('close')
      await update(folder)
    })
  }
  // Now and then all of them may give way, but not as a rule.
  expect(taken).toBeGreaterThan(rounds / 2)
})
