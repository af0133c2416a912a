import { storyOf } from '../../core/jar/state/jar-state.ts'
import type { IsoDay } from '../../core/quantity/time/calendar-day.ts'
import { nextDueMs } from '../due.ts'
import type { Person } from '../person.ts'
import { KNOWN_VERSION, readStored } from '../schema/read-stored.ts'
import { isSetAside, userIdOf } from '../user-id.ts'
import { type Announced, announcedIn } from './announced.ts'
import { copyDays } from './copy-days.ts'
import { type Disk, nodeDisk } from './disk.ts'
import { ifThere } from './disk-failure.ts'
import { type Folders, foldersIn, personPath } from './folders.ts'
import { type Rights, rightsTo } from './rights.ts'
import { readStatus, type StatusRead } from './status.ts'
import { noText } from './stored-at.ts'

/** How a folder of data is, without a name of anybody's. */
export interface FolderFacts {
  readonly rights: Rights
  readonly holder: Announced | null
  readonly people: number
  /** Jars whose start was undone are none. */
  readonly jars: { readonly running: number; readonly all: number }
  /** Files of people that cannot be read, or were written by a newer Larderbell. */
  readonly unreadable: number
  /** Files that could not be read and were set aside. */
  readonly setAside: number
  readonly newestCopy: IsoDay | null
  readonly nextDueMs: number | null
  readonly status: StatusRead
}

interface Seen {
  readonly running: number
  readonly all: number
  readonly dueMs: number
}

function seenIn({ jars, ...others }: Person, zone: string): Seen {
  const stories = jars.flatMap(({ entries }) => storyOf(entries) ?? [])
  const running = stories.filter(({ ended }) => ended === null).length
  return { running, all: stories.length, dueMs: nextDueMs({ jars, ...others }, zone) ?? Number.POSITIVE_INFINITY }
}

/** Null where it cannot be worked on. */
function tried(work: () => Seen | null): Seen | null {
  try {
    return work()
  } catch {
    return null
  }
}

/** As it stands in a file of ours, unchecked, which costs half; with care where that fails. Null for the unreadable. */
const seenInText = (text: string, zone: string): Seen | null =>
  tried(() => {
    const person = JSON.parse(text) as Person
    return person.version === KNOWN_VERSION ? seenIn(person, zone) : null
  }) ??
  tried(() => {
    const stored = readStored(text)
    return stored.kind === 'person' ? seenIn(stored.person, zone) : null
  })

/** Null where there is none; nothing where it is no text. */
async function textAt(disk: Disk, path: string): Promise<string | null> {
  try {
    return await ifThere(path, async () => disk.readFileNow(path))
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
): Promise<FolderFacts | null> {
  const folders = foldersIn(folder)
  const rights = await rightsTo(folders.users)
  if (rights === null) return null
  const names = (await ifThere(folders.users, () => disk.readdir(folders.users))) ?? []
  return {
    rights,
    holder: await announcedIn(disk, folders),
    ...(await inspectPeople(disk, folders, names, assumedZone)),
    setAside: names.filter(isSetAside).length,
    newestCopy: (await copyDays(disk, folders))[0] ?? null,
    status: await readStatus(disk, folders),
  }
}
