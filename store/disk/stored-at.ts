import { readStored, type Stored } from '../schema/read-stored.ts'
import { StorageError } from '../storage-error.ts'
import type { Disk } from './disk.ts'
import { ifThere } from './disk-failure.ts'

const WHERE: Readonly<Record<string, string>> = { EFTYPE: 'not a file', ENXIO: 'not a file', EFBIG: 'too large' }

/** What is wrong with a thing that stands where a text should be; null where the disk failed in another way. */
export function noText(error: unknown): string | null {
  if (!(error instanceof StorageError) || error.problem !== 'disk_failed') return null
  return WHERE[(error as StorageError<'disk_failed'>).values.code] ?? null
}

/** What a file of a person's holds, brought to the newest version; null where there is none. */
export async function storedAt(disk: Disk, path: string): Promise<Stored | null> {
  try {
    const text = await ifThere(path, () => disk.readFile(path))
    return text === null ? null : readStored(text)
  } catch (error) {
    const where = noText(error)
    if (where === null) throw error
    return { kind: 'unreadable', where }
  }
}
