import { Low } from 'lowdb'
import type { Disk } from './disk.ts'
import { ifThere } from './disk-failure.ts'
import type { FolderLock } from './folder-lock.ts'
import { type Folders, personPath } from './folders.ts'
import { NOBODY, type Person } from './person.ts'
import { personText } from './person-text.ts'
import { KNOWN_VERSION, readStored } from './schema/read-stored.ts'
import { setAside } from './set-aside.ts'
import { StorageError } from './storage-error.ts'
import { writeDurably } from './write-durably.ts'

/** People whose files are kept in memory, as long as the folder is ours. */
const MOST_OPEN = 200

export interface FilesOptions {
  readonly disk: Disk
  readonly folders: Folders
  readonly lock: FolderLock
  readonly nowMs: () => number
  readonly log: (text: string) => void
  readonly tellSetAside?: (file: string) => void
}

/** One file for each person; of one person, one call at a time. */
export interface PersonFiles {
  read(userId: string): Promise<Person>
  /** Durable when it returns; when it throws, what is in memory is forgotten and the file is asked again. */
  write(userId: string, person: Person): Promise<void>
  forget(userId: string): void
}

export function personFiles({ disk, folders, lock, nowMs, log, tellSetAside }: FilesOptions): PersonFiles {
  const open = new Map<string, Low<Person>>()

  const write = (userId: string, person: Person): Promise<void> =>
    writeDurably(disk, personPath(folders, userId), userId, personText(person))

  /** The person begins anew, knowing where the old file went. */
  const startAnew = async (userId: string, where: string): Promise<Person> => {
    const file = await setAside(disk, folders, userId, nowMs())
    const person = { ...NOBODY, setAside: file }
    if (tellSetAside === undefined) log(`store: ${userId} could not be read (${where}), set aside as ${file}`)
    else tellSetAside(file)
    await write(userId, person)
    return person
  }

  const read = async (userId: string): Promise<Person | null> => {
    const path = personPath(folders, userId)
    const text = await ifThere(path, () => disk.readFile(path))
    if (text === null) return null
    const stored = readStored(text)
    if (stored.kind === 'person') return stored.person
    if (stored.kind === 'newer') {
      throw new StorageError('newer_version', { path, version: stored.version, known: KNOWN_VERSION })
    }
    if (lock.isHeld()) return startAnew(userId, stored.where)
    await lock.take().catch((error) => {
      throw new StorageError('unreadable', { path }, error)
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
      try {
        await file.adapter.write(person)
      } catch (error) {
        open.delete(userId)
        throw error
      }
      file.data = person
    },
    forget(userId) {
      open.delete(userId)
    },
  }
}
