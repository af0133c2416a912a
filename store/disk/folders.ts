import { dirname, join, resolve } from 'node:path'
import type { IsoDay } from '../../core/quantity/time/calendar-day.ts'
import { personFileName } from '../user-id.ts'
import type { Disk } from './disk.ts'
import { ifThere, onDisk } from './disk-failure.ts'

const FOLDER_MODE = 0o700

/** Where everything stands beneath the folder of data. */
export interface Folders {
  readonly data: string
  /** A file for each person, and what was set aside. */
  readonly users: string
  /** A folder for each day. */
  readonly copies: string
  readonly lock: string
  /** The file that tells how the process at work is. */
  readonly status: string
}

export const foldersIn = (data: string): Folders => ({
  data,
  users: join(data, 'users'),
  copies: join(data, 'copies'),
  lock: join(data, 'lock'),
  status: join(data, 'status.json'),
})

export const personPath = ({ users }: Folders, userId: string): string => join(users, personFileName(userId))

/**
 * Makes a folder, and its parents where they are missing, that only its owner may look into, whatever its rights were
 * before. The names of new folders are durable.
 */
export const ownFolder = (disk: Disk, path: string): Promise<void> =>
  onDisk(path, async () => {
    const made = await disk.mkdir(path, FOLDER_MODE)
    await disk.chmod(path, FOLDER_MODE)
    if (made === null) return
    const topmost = dirname(resolve(made))
    for (let folder = dirname(resolve(path)); ; folder = dirname(folder)) {
      await disk.syncFolder(folder)
      if (folder === topmost) return
    }
  })

const DAY = /^\d{4}-\d{2}-\d{2}$/

export const isCopyDay = (text: string): boolean => DAY.test(text)

/** The days of which there are copies, the latest first. */
export async function copyDays(disk: Disk, { copies }: Folders): Promise<readonly IsoDay[]> {
  const names = (await ifThere(copies, () => disk.readdir(copies))) ?? []
  return names.filter(isCopyDay).toSorted().toReversed()
}
