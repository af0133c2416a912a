import { dirname, join } from 'node:path'
import type { Disk } from './disk.ts'
import { onDisk } from './disk-failure.ts'
import { temporaryName } from './user-id.ts'

const FILE_MODE = 0o600

let written = 0

/**
 * Puts a person's file in place, whole: whoever reads `path` finds the text before or this one, also after a power cut.
 * The order is what that rests on: the text is durable before it takes the name, and the name before this returns.
 */
export function writeDurably(disk: Disk, path: string, userId: string, text: string): Promise<void> {
  const folder = dirname(path)
  written += 1
  const temporary = join(folder, temporaryName(userId, process.pid, written))
  return onDisk(path, async () => {
    try {
      const file = await disk.create(temporary, FILE_MODE)
      try {
        await file.writeFile(text)
        await file.sync()
      } finally {
        await file.close()
      }
      await disk.rename(temporary, path)
    } catch (error) {
      // What stays is swept by the next who takes the folder.
      await disk.unlink(temporary).catch(() => {})
      throw error
    }
    await disk.syncFolder(folder)
  })
}
