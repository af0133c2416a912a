import { join } from 'node:path'
import { readStored } from '../schema/read-stored.ts'
import { StorageError } from '../storage-error.ts'
import { personFileName, userIdOf } from '../user-id.ts'
import type { Disk } from './disk.ts'
import { ifThere, onDisk } from './disk-failure.ts'
import { copyDays, type Folders, ownFolder, personPath } from './folders.ts'
import { fullness } from './fullness.ts'
import { noText, storedAt } from './stored-at.ts'
import { sweep, writeDurably } from './write-durably.ts'

/** Days of copies that are kept. */
const DAYS = 7

const namesIn = async (disk: Disk, folder: string): Promise<readonly string[]> =>
  (await ifThere(folder, () => disk.readdir(folder))) ?? []

/** Whether a copy holds more than its person has, and no later copy as much: it is all that is left of a file that was lost. */
async function isLastFull(disk: Disk, folders: Folders, day: string, name: string): Promise<boolean> {
  const userId = userIdOf(name)
  if (userId === null) return false
  const own = await storedAt(disk, personPath(folders, userId))
  const full = fullness(await storedAt(disk, join(folders.copies, day, name)))
  if (own === null || full <= fullness(own)) return false
  for (const later of await copyDays(disk, folders)) {
    if (later > day && fullness(await storedAt(disk, join(folders.copies, later, name))) >= full) return false
  }
  return true
}

async function removeDay(disk: Disk, folders: Folders, day: string): Promise<void> {
  const folder = join(folders.copies, day)
  let isKept = false
  for (const name of await namesIn(disk, folder)) {
    if (await isLastFull(disk, folders, day, name)) isKept = true
    else await ifThere(folder, () => disk.unlink(join(folder, name)))
  }
  if (!isKept) await ifThere(folder, () => disk.rmdir(folder))
}

/** The folder of today's copies, made where it is missing, and those of the other days, the latest first. */
async function makeRoom(disk: Disk, folders: Folders, today: string): Promise<readonly string[]> {
  const others = (await copyDays(disk, folders)).filter((day) => day !== today)
  for (const day of others.slice(DAYS - 1)) await removeDay(disk, folders, day)
  const kept = others.slice(0, DAYS - 1)
  for (const day of [today, ...kept]) await sweep(disk, join(folders.copies, day))
  await ownFolder(disk, folders.copies)
  await ownFolder(disk, join(folders.copies, today))
  await onDisk(folders.copies, () => disk.syncFolder(folders.copies))
  return [today, ...kept]
}

async function textAt(disk: Disk, path: string): Promise<string | null> {
  try {
    return await ifThere(path, () => disk.readFile(path))
  } catch (error) {
    if (noText(error) === null) throw error
    return null
  }
}

/**
 * Copies into the folder of `today` (UTC) everybody whose file differs from the latest copy; seven days are kept, and
 * whoever had the only copy in a day that went is copied again. What cannot be read is never copied, and nobody who began
 * anew is copied over a copy that holds more; where such a copy is all that is left, it outlives its seven days. `turn`
 * does the work for one person between two changes. Answers with the number of files copied; a failure stops no other
 * copy, and is thrown at the end.
 */
export async function copyChanged(
  disk: Disk,
  folders: Folders,
  today: string,
  turn: (userId: string, work: () => Promise<boolean>) => Promise<boolean>,
): Promise<number> {
  const days = await makeRoom(disk, folders, today)
  const inDay = new Map<string, ReadonlySet<string>>()
  for (const day of days) {
    const folder = join(folders.copies, day)
    inDay.set(day, new Set(await onDisk(folder, () => disk.readdir(folder))))
  }
  const copyOne = async (userId: string): Promise<boolean> => {
    const name = personFileName(userId)
    const text = await textAt(disk, personPath(folders, userId))
    if (text === null) return false
    const day = days.find((one) => inDay.get(one)?.has(name))
    if (day !== undefined && (await textAt(disk, join(folders.copies, day, name))) === text) return false
    const own = readStored(text)
    if (own.kind === 'unreadable') return false
    const copy = join(folders.copies, today, name)
    if (day === today && fullness(await storedAt(disk, copy)) > fullness(own)) return false
    await writeDurably(disk, copy, userId, () => text)
    return true
  }
  let [copied, failed]: [number, unknown] = [0, null]
  for (const name of await namesIn(disk, folders.users)) {
    const userId = userIdOf(name)
    if (userId === null) continue
    try {
      if (await turn(userId, () => copyOne(userId))) copied += 1
    } catch (error) {
      if (!(error instanceof StorageError) || error.problem === 'closed' || error.problem === 'disk_full') throw error
      failed ??= error
    }
  }
  if (failed !== null) throw failed
  return copied
}
