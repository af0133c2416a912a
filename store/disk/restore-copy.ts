import { join } from 'node:path'
import type { IsoDay } from '../../core/quantity/time/calendar-day.ts'
import type { Person } from '../person.ts'
import { KNOWN_VERSION } from '../schema/read-stored.ts'
import { StorageError } from '../storage-error.ts'
import { checkUserId, personFileName } from '../user-id.ts'
import { copyDays, isCopyDay } from './copy-days.ts'
import { type Disk, nodeDisk } from './disk.ts'
import { ifThere, onDisk } from './disk-failure.ts'
import { folderLock } from './folder-lock.ts'
import { type Folders, foldersIn, personPath } from './folders.ts'
import { entriesOf } from './fullness.ts'
import { personText } from './person-text.ts'
import { setAside } from './set-aside.ts'
import { storedAt } from './stored-at.ts'
import { writeDurably } from './write-durably.ts'

/** A copy that was put back. */
export interface Restored {
  readonly jars: number
  readonly entries: number
  /** The name that what stood in its place has now, among the files of people; null where nothing stood there. */
  readonly aside: string | null
}

async function copyOf(disk: Disk, folders: Folders, userId: string, day: IsoDay): Promise<Person> {
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
  if (stored.kind === 'person') return stored.person
  throw new StorageError('newer_version', { path, version: stored.version, known: KNOWN_VERSION })
}

/**
 * Puts the copy of a day in the place of a person's file, checked and brought to the newest version; what stood there is set
 * aside and kept. Takes the lock for it: throws `locked` while a Larderbell works there, and `no_copy`, `bad_copy`.
 */
export async function restoreCopy(
  { folder, nowMs, disk = nodeDisk }: { readonly folder: string; readonly nowMs: number; readonly disk?: Disk },
  userId: string,
  day: IsoDay,
): Promise<Restored> {
  checkUserId(userId)
  const folders = foldersIn(folder)
  const person = { ...(await copyOf(disk, folders, userId, day)), setAside: null }
  const lock = folderLock(disk, folders)
  await lock.take()
  try {
    const path = personPath(folders, userId)
    const names = await onDisk(folders.users, () => disk.readdir(folders.users))
    const aside = names.includes(personFileName(userId))
      ? await onDisk(path, () => setAside(disk, folders, { userId, reason: 'replaced', nowMs }))
      : null
    await writeDurably(disk, path, userId, personText(person))
    return { jars: person.jars.length, entries: entriesOf(person), aside }
  } finally {
    await lock.release()
  }
}
