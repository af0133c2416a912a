import { unlinkSync } from 'node:fs'
import { stat } from 'node:fs/promises'
import { join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'
import type { HeldBy } from '../maintenance.ts'
import { StorageError } from '../storage-error.ts'
import type { Disk } from './disk.ts'
import { ifThere, onDisk, systemCode } from './disk-failure.ts'
import { type Folders, ownFolder } from './folders.ts'
import { type Holder, holderName, holderOf, isSeen, mayStillRun, thisHolder } from './holder.ts'
import { sweep } from './write-durably.ts'

const FILE_MODE = 0o600
const LOOKS = 15
const PAUSE_MS = 20

/** Lets go of the folder; what fails is left to the next one, who finds this process gone. */
type Release = () => Promise<void>

const byName = (one: Holder, other: Holder): number => (holderName(one) < holderName(other) ? -1 : 1)

/** Who else is announced and may still run; the names of those who are gone are taken away. */
async function others(disk: Disk, folder: string, mine: Holder): Promise<readonly Holder[]> {
  const names = await onDisk(folder, () => disk.readdir(folder))
  const alive: Holder[] = []
  for (const name of names) {
    const holder = name === holderName(mine) ? null : holderOf(name)
    if (holder === null) continue
    if (mayStillRun(holder, mine)) alive.push(holder)
    else await ifThere(folder, () => disk.unlink(join(folder, name)))
  }
  return alive
}

/** Throws `locked` while another holder is announced who may still run. */
async function waitForOthers(disk: Disk, { data, lock }: Folders, mine: Holder): Promise<void> {
  for (let look = 1; ; look++) {
    const [first] = (await others(disk, lock, mine)).toSorted(byName)
    if (first === undefined) return
    if (look === LOOKS || byName(first, mine) < 0) {
      const { host, pid } = first
      throw new StorageError('locked', { folder: data, host, pid, isHere: isSeen(first, mine) })
    }
    await sleep(PAUSE_MS)
  }
}

async function announce(disk: Disk, path: string): Promise<void> {
  try {
    await (await disk.create(path, FILE_MODE)).close()
  } catch (error) {
    // It is our own, from an attempt that failed and could not be withdrawn.
    if (systemCode(error) !== 'EEXIST') throw error
  }
}

/**
 * Takes the folder for `mine`, or throws `locked`. Each holder puts up a name of its own and then looks whether there is
 * another: of two, the one that came later sees the first, so two never both have it, and a name is only taken away when
 * its process is gone and cannot come back. Where two come at once, the lesser name waits for the other to give way.
 */
async function takeLock(disk: Disk, folders: Folders, mine: Holder): Promise<Release> {
  await ownFolder(disk, folders.lock)
  const path = join(folders.lock, holderName(mine))
  try {
    await onDisk(path, () => announce(disk, path))
    await waitForOthers(disk, folders, mine)
  } catch (error) {
    await disk.unlink(path).catch(() => {})
    throw error
  }
  const atExit = (): void => {
    try {
      unlinkSync(path)
    } catch {}
  }
  process.once('exit', atExit)
  return async () => {
    try {
      await disk.unlink(path)
      process.removeListener('exit', atExit)
    } catch {}
  }
}

/** The lock on the folder of data, taken when it is first needed and kept. */
export interface FolderLock {
  /** Throws `locked` where another process has it; asked again, it tries again. */
  take(): Promise<void>
  isHeld(): boolean
  release(): Promise<void>
}

async function prepared(disk: Disk, folders: Folders, mine: Holder): Promise<Release> {
  await ownFolder(disk, folders.users)
  const release = await takeLock(disk, folders, mine)
  try {
    await sweep(disk, folders.users)
    return release
  } catch (error) {
    await release()
    throw error
  }
}

export function folderLock(disk: Disk, folders: Folders): FolderLock {
  const mine = thisHolder()
  let taking: Promise<Release> | null = null
  let isHeld = false
  return {
    async take() {
      taking ??= prepared(disk, folders, mine)
      const attempt = taking
      try {
        await attempt
        isHeld = true
      } catch (error) {
        if (taking === attempt) taking = null
        throw error
      }
    },
    isHeld: () => isHeld,
    async release() {
      isHeld = false
      const release = await taking?.catch(() => null)
      await release?.()
    },
  }
}

/** Looks at the lock and leaves it as it is; of several holders, one that may run comes first. */
export async function heldBy(disk: Disk, { lock }: Folders): Promise<HeldBy | null> {
  const here = thisHolder()
  const found: HeldBy[] = []
  for (const name of (await ifThere(lock, () => disk.readdir(lock))) ?? []) {
    const holder = holderOf(name)
    const put = holder && (await ifThere(lock, () => stat(join(lock, name))))
    if (!holder || !put) continue
    const { pid, host } = holder
    found.push({ pid, host, isHere: isSeen(holder, here), mayRun: mayStillRun(holder, here), sinceMs: put.mtimeMs })
  }
  return found.find(({ mayRun }) => mayRun) ?? found[0] ?? null
}
