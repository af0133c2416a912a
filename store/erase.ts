import { join } from 'node:path'
import { copyDays } from './copies.ts'
import type { Disk } from './disk.ts'
import { ifThere, onDisk } from './disk-failure.ts'
import { type Folders, personPath } from './folders.ts'
import { isLeftOf, isTemporary, personFileName } from './user-id.ts'

async function eraseIn(disk: Disk, folder: string, isTheirs: (name: string) => boolean): Promise<number> {
  const names = ((await ifThere(folder, () => disk.readdir(folder))) ?? []).filter(isTheirs)
  for (const name of names) {
    const path = join(folder, name)
    await ifThere(path, () => disk.unlink(path))
  }
  if (names.length > 0) await onDisk(folder, () => disk.syncFolder(folder))
  return names.filter((name) => !isTemporary(name)).length
}

/**
 * Erases a person's file and everything left of it, durably; answers with the number of copies and files set aside. The
 * file itself goes last, so that who is interrupted is still there to ask again.
 */
export async function erase(disk: Disk, folders: Folders, userId: string): Promise<number> {
  let copies = 0
  for (const day of await copyDays(disk, folders)) {
    const isCopy = (name: string): boolean => name === personFileName(userId) || isLeftOf(userId, name)
    copies += await eraseIn(disk, join(folders.copies, day), isCopy)
  }
  copies += await eraseIn(disk, folders.users, (name) => isLeftOf(userId, name))
  const path = personPath(folders, userId)
  await ifThere(path, () => disk.unlink(path))
  await onDisk(folders.users, () => disk.syncFolder(folders.users))
  return copies
}
