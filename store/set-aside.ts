import { join } from 'node:path'
import type { Disk } from './disk.ts'
import { systemCode } from './disk-failure.ts'
import { type Folders, personPath } from './folders.ts'
import { StorageError } from './storage-error.ts'
import { setAsideName } from './user-id.ts'

/** `2026-11-25T10-30-00-000Z`: an instant that may stand in the name of a file everywhere. */
const stampOf = (nowMs: number): string => new Date(nowMs).toISOString().replace(/[:.]/g, '-')

/**
 * Gives what cannot be read a name of its own beside, and answers with that name. The file keeps its old name too until a
 * new one takes it, so that a crash in between only means that it is set aside once more. Throws `unreadable`.
 */
export async function setAside(disk: Disk, folders: Folders, userId: string, nowMs: number): Promise<string> {
  const path = personPath(folders, userId)
  try {
    const taken = await disk.readdir(folders.users)
    let count = 0
    while (taken.includes(setAsideName(userId, stampOf(nowMs), count))) count += 1
    const name = setAsideName(userId, stampOf(nowMs), count)
    const aside = join(folders.users, name)
    try {
      await disk.link(path, aside)
    } catch (error) {
      // Some file systems have no second names.
      if (!['EPERM', 'ENOTSUP', 'ENOSYS', 'EOPNOTSUPP'].includes(systemCode(error) ?? '')) throw error
      await disk.rename(path, aside)
    }
    await disk.syncFolder(folders.users)
    return name
  } catch (error) {
    throw new StorageError('unreadable', { path }, error)
  }
}
