import { basename, dirname, join } from 'node:path'
import { StorageError } from '../storage-error.ts'
import { isLeftOf, isTemporary, personFileName } from '../user-id.ts'
import type { Disk } from './disk.ts'
import { ifThere, onDisk, systemCode } from './disk-failure.ts'
import { copyDays, type Folders, personPath } from './folders.ts'
import { realPath } from './real-path.ts'

async function eraseIn(disk: Disk, folder: string, isTheirs: (name: string) => boolean): Promise<number> {
  const names = ((await ifThere(folder, () => disk.readdir(folder))) ?? []).filter(isTheirs)
  for (const name of names) {
    const path = join(folder, name)
    await ifThere(path, () => disk.unlink(path))
  }
  if (names.length > 0) await onDisk(folder, () => disk.syncFolder(folder))
  return names.filter((name) => !isTemporary(name)).length
}

/** What stands where a link in a person's place leads, and what killed writers left beside it. */
async function eraseLinked(disk: Disk, userId: string, path: string): Promise<void> {
  const real = await onDisk(path, () => realPath(disk, path))
  if (real === path) return
  await eraseIn(disk, dirname(real), (name) => name === basename(real) || (isTemporary(name) && isLeftOf(userId, name)))
}

/**
 * Erases a person's file and everything left of it, durably; answers with the number of copies and files set aside. The
 * file itself goes last, so that who is interrupted is still there to ask again. Throws `half_erased` where the disk fails
 * on the way.
 */
export async function erase(disk: Disk, folders: Folders, userId: string): Promise<number> {
  const path = personPath(folders, userId)
  let copies = 0
  try {
    for (const day of await copyDays(disk, folders)) {
      const isCopy = (name: string): boolean => name === personFileName(userId) || isLeftOf(userId, name)
      copies += await eraseIn(disk, join(folders.copies, day), isCopy)
    }
    copies += await eraseIn(disk, folders.users, (name) => isLeftOf(userId, name))
    await eraseLinked(disk, userId, path)
    await ifThere(path, () => disk.unlink(path))
    await onDisk(folders.users, () => disk.syncFolder(folders.users))
  } catch (error) {
    if (!(error instanceof StorageError)) throw error
    throw new StorageError('half_erased', { path, code: systemCode(error.cause) ?? '?' }, error)
  }
  return copies
}
