import { dirname, join } from 'node:path'
import { StorageError } from '../storage-error.ts'
import { isTemporary, temporaryName } from '../user-id.ts'
import type { Disk } from './disk.ts'
import { ifThere, onDisk, systemCode } from './disk-failure.ts'
import { realPath } from './real-path.ts'

const FILE_MODE = 0o600

let written = 0

/**
 * Puts a person's file in place, whole: whoever reads `path` finds what was there before or what `make` makes, also after a
 * power cut. That rests on the order: the text is durable before it takes the name, and the name before this returns. A
 * link stays one. Throws `unsure` where the name was taken but may not be durable: then either may be found later.
 */
export function writeDurably(disk: Disk, path: string, userId: string, make: () => string | Uint8Array): Promise<void> {
  written += 1
  const name = temporaryName(userId, process.pid, written)
  return onDisk(path, async () => {
    // Made while the disk looks where the path leads.
    const [real, content] = await Promise.all([realPath(disk, path), Promise.resolve().then(make)])
    const folder = dirname(real)
    const temporary = join(folder, name)
    try {
      const file = await disk.create(temporary, FILE_MODE)
      try {
        await file.writeFile(content)
        await file.sync()
      } finally {
        await file.close()
      }
      await disk.rename(temporary, real)
    } catch (error) {
      // What stays is swept away by the next process that takes the folder.
      await disk.unlink(temporary).catch(() => {})
      throw error
    }
    try {
      await disk.syncFolder(folder)
    } catch (error) {
      throw new StorageError('unsure', { path, code: systemCode(error) ?? '?' }, error)
    }
  })
}

/** Removes what killed writers left in a folder; only the holder of the lock may. */
export async function sweep(disk: Disk, folder: string): Promise<void> {
  const names = (await ifThere(folder, () => disk.readdir(folder))) ?? []
  for (const name of names.filter(isTemporary)) {
    const path = join(folder, name)
    await ifThere(path, () => disk.unlink(path))
  }
}
