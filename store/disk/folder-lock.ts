import type { Disk } from './disk.ts'
import { type Folders, ownFolder } from './folders.ts'
import { type Holder, thisHolder } from './holder.ts'
import { type Release, takeLock } from './lock.ts'
import { sweep } from './sweep.ts'

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
