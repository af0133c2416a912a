import { unlinkSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'
import { StorageError } from '../storage-error.ts'
import type { Disk } from './disk.ts'
import { ifThere, onDisk, systemCode } from './disk-failure.ts'
import { type Folders, ownFolder } from './folders.ts'
import { type Holder, holderName, holderOf, isSeen, mayStillRun } from './holder.ts'

const FILE_MODE = 0o600
const LOOKS = 15
const PAUSE_MS = 20

/** Lets go of the folder; what fails is left to the next one, who finds this process gone. */
export type Release = () => Promise<void>

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
    // Ours, from an attempt that could not even withdraw.
    if (systemCode(error) !== 'EEXIST') throw error
  }
}

/**
 * Takes the folder for `mine`, or throws `locked`. Each holder puts up a name of its own and then looks whether there is
 * another: of two, the one that came later sees the first, so two never both have it, and a name is only taken away when
 * its process is gone and cannot come back. Where two come at once, the lesser name waits for the other to give way.
 */
export async function takeLock(disk: Disk, folders: Folders, mine: Holder): Promise<Release> {
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
