import { Low } from 'lowdb'
import { NOBODY, type Person, type SetAside } from '../person.ts'
import { KNOWN_VERSION, readStored } from '../schema/read-stored.ts'
import { StorageError } from '../storage-error.ts'
import { type Disk, MOST_BYTES } from './disk.ts'
import { ifThere } from './disk-failure.ts'
import type { FolderLock } from './folder-lock.ts'
import { type Folders, personPath } from './folders.ts'
import { fullestDay } from './fullness.ts'
import type { PersonTexts } from './person-text.ts'
import { setAside } from './set-aside.ts'
import { storedAt } from './stored-at.ts'
import { writeDurably } from './write-durably.ts'

/** People whose files are kept in memory, as long as the folder is ours. */
const MOST_OPEN = 200

export interface FilesOptions {
  readonly disk: Disk
  readonly folders: Folders
  readonly lock: FolderLock
  readonly texts: PersonTexts
  readonly nowMs: () => number
  readonly log: (text: string) => void
  readonly tellSetAside?: (aside: SetAside) => void
}

/** One file for each person. Calls for one person have to come one at a time. */
export interface PersonFiles {
  read(userId: string): Promise<Person>
  /** Durable when it returns. When it throws, what is in memory is forgotten, and the next call asks the file. */
  write(userId: string, person: Person): Promise<void>
  /** Makes durable what an attempt that ended with `unsure` may have left; nothing where none has. */
  settle(userId: string): Promise<void>
  /**
   * Writes a file anew whose stamp is of other rules, as all are after an upgrade, and answers whether it did. What is not
   * there, cannot be read or is newer stays as it is, and so does what the disk refuses: nobody waits for it.
   */
  renewStamp(userId: string): Promise<boolean>
  forget(userId: string): void
}

export function personFiles({ disk, folders, lock, texts, nowMs, log, tellSetAside }: FilesOptions): PersonFiles {
  const open = new Map<string, Low<Person>>()
  const unsure = new Set<string>()

  const write = async (userId: string, person: Person): Promise<void> => {
    const make = (): Buffer => {
      const file = texts.bytesOf(person)
      if (file.length > MOST_BYTES) throw new StorageError('too_large', { mostBytes: MOST_BYTES })
      return file
    }
    try {
      await writeDurably(disk, personPath(folders, userId), userId, make)
      unsure.delete(userId)
    } catch (error) {
      if (error instanceof StorageError && error.problem === 'unsure') unsure.add(userId)
      throw error
    }
  }

  /** Sets the file aside; the person begins anew and keeps where the old file went. */
  const startAnew = async (userId: string, where: string): Promise<Person> => {
    const path = personPath(folders, userId)
    // Where the copies cannot be looked at, no day is named.
    const day = await fullestDay(disk, folders, userId).catch(() => null)
    const file = await setAside(disk, folders, { userId, reason: 'unreadable', nowMs: nowMs() }).catch((error) => {
      throw new StorageError('unreadable', { path, userId, day }, error)
    })
    const aside = { file, day }
    if (tellSetAside !== undefined) tellSetAside(aside)
    else {
      const copy = day === null ? 'no copy of it holds a jar' : `the copy of ${day} holds most`
      log(`store: ${userId} could not be read (${where}), set aside as ${file}; ${copy}`)
    }
    const person = { ...NOBODY, setAside: aside }
    await write(userId, person)
    return person
  }

  const read = async (userId: string): Promise<Person | null> => {
    const path = personPath(folders, userId)
    const stored = await storedAt(disk, path)
    if (stored === null) return null
    if (stored.kind === 'person') return stored.person
    if (stored.kind === 'newer') {
      throw new StorageError('newer_version', { path, version: stored.version, known: KNOWN_VERSION })
    }
    if (lock.isHeld()) return startAnew(userId, stored.where)
    await lock.take().catch(async (error) => {
      const day = await fullestDay(disk, folders, userId).catch(() => null)
      throw new StorageError('unreadable', { path, userId, day }, error)
    })
    return read(userId)
  }

  const opened = async (userId: string): Promise<Low<Person>> => {
    const known = open.get(userId)
    const isOurs = lock.isHeld()
    const file =
      known ?? new Low<Person>({ read: () => read(userId), write: (person) => write(userId, person) }, NOBODY)
    if (known === undefined) await file.read()
    if (!isOurs) return file
    open.delete(userId)
    open.set(userId, file)
    const [oldest] = open.keys()
    if (open.size > MOST_OPEN && oldest !== undefined) open.delete(oldest)
    return file
  }

  return {
    async read(userId) {
      return (await opened(userId)).data
    },
    async write(userId, person) {
      const file = await opened(userId)
      file.data = person
      try {
        await file.write()
      } catch (error) {
        open.delete(userId)
        throw error
      }
    },
    async settle(userId) {
      if (unsure.has(userId)) await (await opened(userId)).write()
    },
    async renewStamp(userId) {
      try {
        const path = personPath(folders, userId)
        const file = await ifThere(path, async () => disk.readBytesNow(path))
        if (file === null || texts.isOfTheseRules(file) || readStored(String(file)).kind !== 'person') return false
        await (await opened(userId)).write()
        return true
      } catch (error) {
        if (error instanceof StorageError) return false
        throw error
      }
    },
    forget(userId) {
      open.delete(userId)
      unsure.delete(userId)
    },
  }
}
