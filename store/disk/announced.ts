import { stat } from 'node:fs/promises'
import { join } from 'node:path'
import type { Disk } from './disk.ts'
import { ifThere } from './disk-failure.ts'
import type { Folders } from './folders.ts'
import { holderOf, isSeen, mayStillRun, thisHolder } from './holder.ts'

/** Who has put up a name to hold the folder of data. */
export interface Announced {
  readonly pid: number
  readonly host: string
  /** Of another host nothing is known: then it may run. */
  readonly isHere: boolean
  /** False where it ended without taking its name down. */
  readonly mayRun: boolean
  readonly sinceMs: number
}

/** Looks at the lock and leaves it as it is; who may run first. */
export async function announcedIn(disk: Disk, { lock }: Folders): Promise<Announced | null> {
  const here = thisHolder()
  const found: Announced[] = []
  for (const name of (await ifThere(lock, () => disk.readdir(lock))) ?? []) {
    const holder = holderOf(name)
    const put = holder && (await ifThere(lock, () => stat(join(lock, name))))
    if (!holder || !put) continue
    const { pid, host } = holder
    found.push({ pid, host, isHere: isSeen(holder, here), mayRun: mayStillRun(holder, here), sinceMs: put.mtimeMs })
  }
  return found.find(({ mayRun }) => mayRun) ?? found[0] ?? null
}
