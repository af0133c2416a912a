import { join } from 'node:path'
import type { IsoDay } from '../../core/quantity/time/calendar-day.ts'
import { entriesOf } from '../person.ts'
import type { Stored } from '../schema/read-stored.ts'
import { personFileName } from '../user-id.ts'
import type { Disk } from './disk.ts'
import { copyDays, type Folders } from './folders.ts'
import { storedAt } from './stored-at.ts'

/**
 * How many entries a file holds. They are only ever added, except where a person began anew, so the copy with more is worth
 * more. 0 for no file and for one that cannot be read; a newer version cannot be counted and counts as most.
 */
export function fullness(stored: Stored | null): number {
  if (stored === null || stored.kind === 'unreadable') return 0
  return stored.kind === 'newer' ? Number.POSITIVE_INFINITY : entriesOf(stored.person)
}

/** The day of the copy with the most entries, the latest of several; null where no copy holds a jar. */
export async function fullestDay(disk: Disk, folders: Folders, userId: string): Promise<IsoDay | null> {
  let [found, most]: [IsoDay | null, number] = [null, 0]
  for (const day of await copyDays(disk, folders)) {
    const entries = fullness(await storedAt(disk, join(folders.copies, day, personFileName(userId))))
    if (entries > most) [found, most] = [day, entries]
  }
  return found
}
