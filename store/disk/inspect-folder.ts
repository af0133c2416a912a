import { constants } from 'node:fs'
import { access, stat } from 'node:fs/promises'
import { jarStateOf } from '../../core/jar/state/jar-state.ts'
import { nextDueMs } from '../due.ts'
import type { Rights, StoreFacts } from '../maintenance.ts'
import type { Person } from '../person.ts'
import { readStored, readUnchecked } from '../schema/read-stored.ts'
import { isSetAside, userIdOf } from '../user-id.ts'
import { type Disk, nodeDisk } from './disk.ts'
import { ifThere, systemCode } from './disk-failure.ts'
import { heldBy } from './folder-lock.ts'
import { copyDays, type Folders, foldersIn, personPath } from './folders.ts'
import { readStatus } from './status.ts'
import { noText } from './stored-at.ts'

/** Rights of anybody but the owner. */
const OTHERS = 0o077

const isWritable = async (path: string): Promise<boolean> => {
  try {
    await access(path, constants.W_OK)
    return true
  } catch (error) {
    if (['EACCES', 'EPERM', 'EROFS'].includes(systemCode(error) ?? '')) return false
    throw error
  }
}

/** Null where there is no folder. Throws `no_rights` where it may not even be looked into. */
const rightsTo = (path: string): Promise<Rights | null> =>
  ifThere(path, async () => {
    await access(path, constants.R_OK | constants.X_OK)
    if (!(await isWritable(path))) return 'read_only'
    const { mode } = await stat(path)
    // Windows keeps rights elsewhere.
    return process.platform !== 'win32' && (mode & OTHERS) !== 0 ? 'shared' : 'own'
  })

interface Seen {
  readonly running: number
  readonly all: number
  readonly dueMs: number
}

function seenIn({ jars, ...others }: Person, zone: string): Seen {
  const stories = jars.flatMap(({ entries }) => jarStateOf(entries) ?? [])
  const running = stories.filter(({ ended }) => ended === null).length
  return { running, all: stories.length, dueMs: nextDueMs({ jars, ...others }, zone) ?? Number.POSITIVE_INFINITY }
}

/** Null where `work` throws. */
function tried(work: () => Seen | null): Seen | null {
  try {
    return work()
  } catch {
    return null
  }
}

/** Reads it unchecked, and with care where that fails; null where it cannot be read. */
const seenInText = (text: string, zone: string): Seen | null =>
  tried(() => {
    const person = readUnchecked(text)
    return person === null ? null : seenIn(person, zone)
  }) ??
  tried(() => {
    const stored = readStored(text)
    return stored.kind === 'person' ? seenIn(stored.person, zone) : null
  })

/** Null where there is no file, empty where it is no text. */
async function textAt(disk: Disk, path: string): Promise<string | null> {
  try {
    return await ifThere(path, async () => String(disk.readBytesNow(path)))
  } catch (error) {
    if (noText(error) === null) throw error
    return ''
  }
}

async function inspectPeople(disk: Disk, folders: Folders, names: readonly string[], zone: string) {
  let [people, running, all, unreadable] = [0, 0, 0, 0]
  let dueMs = Number.POSITIVE_INFINITY
  for (const name of names) {
    const userId = userIdOf(name)
    if (userId === null) continue
    const path = personPath(folders, userId)
    const text = await textAt(disk, path)
    if (text === null) continue
    people += 1
    const seen = seenInText(text, zone)
    if (seen === null) {
      unreadable += 1
      continue
    }
    running += seen.running
    all += seen.all
    dueMs = Math.min(dueMs, seen.dueMs)
  }
  return { people, jars: { running, all }, unreadable, nextDueMs: Number.isFinite(dueMs) ? dueMs : null }
}

/**
 * Reads everything there is in a folder of data, takes no lock and changes nothing; null where there is no such folder.
 * Throws `StorageError` where it cannot be read.
 */
export async function inspectFolder(
  folder: string,
  assumedZone: string,
  disk: Disk = nodeDisk,
): Promise<StoreFacts | null> {
  const folders = foldersIn(folder)
  const rights = await rightsTo(folders.users)
  if (rights === null) return null
  const names = (await ifThere(folders.users, () => disk.readdir(folders.users))) ?? []
  return {
    rights,
    holder: await heldBy(disk, folders),
    ...(await inspectPeople(disk, folders, names, assumedZone)),
    setAside: names.filter(isSetAside).length,
    newestCopy: (await copyDays(disk, folders))[0] ?? null,
    status: await readStatus(disk, folders),
  }
}
