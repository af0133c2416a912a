import { join } from 'node:path'
import { isTemporary } from '../user-id.ts'
import type { Disk } from './disk.ts'
import { ifThere } from './disk-failure.ts'

/** Takes away what writers that were killed have left in a folder; only who holds the lock may. */
export async function sweep(disk: Disk, folder: string): Promise<void> {
  const names = (await ifThere(folder, () => disk.readdir(folder))) ?? []
  for (const name of names.filter(isTemporary)) {
    const path = join(folder, name)
    await ifThere(path, () => disk.unlink(path))
  }
}
