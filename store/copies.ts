import { join } from 'node:path'
import type { Disk } from './disk.ts'
import { ifThere, onDisk } from './disk-failure.ts'
import { type Folders, ownFolder, personPath } from './folders.ts'
import { sweep } from './sweep.ts'
import { personFileName, userIdOf } from './user-id.ts'
import { writeDurably } from './write-durably.ts'

/** Days of copies that are kept. */
const DAYS = 7

const DAY = /^\d{4}-\d{2}-\d{2}$/

/** The days of which there are copies, the latest first. */
export async function copyDays(disk: Disk, { copies }: Folders): Promise<readonly string[]> {
  const names = (await ifThere(copies, () => disk.readdir(copies))) ?? []
  return names
    .filter((name) => DAY.test(name))
    .toSorted()
    .toReversed()
}

async function removeDay(disk: Disk, folder: string): Promise<void> {
  const names = (await ifThere(folder, () => disk.readdir(folder))) ?? []
  for (const name of names) await ifThere(folder, () => disk.unlink(join(folder, name)))
  await ifThere(folder, () => disk.rmdir(folder))
}

/** The folder of today's copies, made where it is missing, and those of the other days, the latest first. */
async function makeRoom(disk: Disk, folders: Folders, today: string): Promise<readonly string[]> {
  const others = (await copyDays(disk, folders)).filter((day) => day !== today)
  for (const day of others.slice(DAYS - 1)) await removeDay(disk, join(folders.copies, day))
  const kept = others.slice(0, DAYS - 1)
  for (const day of [today, ...kept]) await sweep(disk, join(folders.copies, day))
  await ownFolder(disk, folders.copies)
  await ownFolder(disk, join(folders.copies, today))
  await onDisk(folders.copies, () => disk.syncFolder(folders.copies))
  return [today, ...kept]
}

/**
 * Copies into the folder of `today` (UTC) whoever is not in the latest copy as he is now; seven days are kept. Whoever
 * had his only copy in a day that went is copied again. `turn` does the work for one person between his changes. Answers
 * with the number of files copied.
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
    const path = personPath(folders, userId)
    const text = await ifThere(path, () => disk.readFile(path))
    if (text === null) return false
    const day = days.find((one) => inDay.get(one)?.has(name))
    const last = day === undefined ? null : join(folders.copies, day, name)
    if (last !== null && (await ifThere(last, () => disk.readFile(last))) === text) return false
    await writeDurably(disk, join(folders.copies, today, name), userId, text)
    return true
  }
  let copied = 0
  for (const name of (await ifThere(folders.users, () => disk.readdir(folders.users))) ?? []) {
    const userId = userIdOf(name)
    if (userId !== null && (await turn(userId, () => copyOne(userId)))) copied += 1
  }
  return copied
}
