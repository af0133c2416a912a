import { join } from 'node:path'
import type { IsoDay } from '../../core/quantity/time/calendar-day.ts'
import type { Person } from '../person.ts'
import { KNOWN_VERSION } from '../schema/read-stored.ts'
import { StorageError } from '../storage-error.ts'
import { personFileName } from '../user-id.ts'
import type { Disk } from './disk.ts'
import { ifThere, onDisk } from './disk-failure.ts'
import { copyDays, type Folders, isCopyDay, personPath } from './folders.ts'
import { setAside } from './set-aside.ts'
import { storedAt } from './stored-at.ts'
import { writeDurably } from './write-durably.ts'

/** The person in the copy of a day, checked and brought to the newest version. Throws `no_copy`, `bad_copy`. */
export async function copiedPerson(disk: Disk, folders: Folders, userId: string, day: IsoDay): Promise<Person> {
  const path = join(folders.copies, day, personFileName(userId))
  const stored = isCopyDay(day) ? await storedAt(disk, path) : null
  if (stored === null) {
    const days: IsoDay[] = []
    for (const each of await copyDays(disk, folders)) {
      const names = (await ifThere(folders.copies, () => disk.readdir(join(folders.copies, each)))) ?? []
      if (names.includes(personFileName(userId))) days.push(each)
    }
    throw new StorageError('no_copy', { userId, day, days })
  }
  if (stored.kind === 'unreadable') throw new StorageError('bad_copy', { path })
  if (stored.kind === 'person') return { ...stored.person, setAside: null }
  throw new StorageError('newer_version', { path, version: stored.version, known: KNOWN_VERSION })
}

/**
 * Puts a file in the place of a person's file, whatever stands there; that is set aside first, and the answer says where.
 * Only who holds the lock may.
 */
export async function replaceFile(
  disk: Disk,
  folders: Folders,
  { userId, file, nowMs }: { readonly userId: string; readonly file: Buffer; readonly nowMs: number },
): Promise<string | null> {
  const path = personPath(folders, userId)
  const names = await onDisk(folders.users, () => disk.readdir(folders.users))
  const aside = names.includes(personFileName(userId))
    ? await onDisk(path, () => setAside(disk, folders, { userId, reason: 'replaced', nowMs }))
    : null
  await writeDurably(disk, path, userId, () => file)
  return aside === null ? null : join(folders.users, aside)
}
