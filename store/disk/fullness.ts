import { join } from 'node:path'
import type { IsoDay } from '../../core/quantity/time/calendar-day.ts'
import type { Person } from '../person.ts'
import type { Stored } from '../schema/read-stored.ts'
import { personFileName } from '../user-id.ts'
import type { Disk } from './disk.ts'
import { copyDays, type Folders } from './folders.ts'
import { storedAt } from './stored-at.ts'

export const entriesOf = ({ jars }: Pick<Person, 'jars'>): number =>
  jars.reduce((sum, { entries }) => sum + entries.length, 0)

/**
 * How many entries a file holds, which grow and never shrink but where a person began anew: then the copy with more is worth
 * more. 0 of nothing and of what cannot be read; of a newer version it cannot be told and counts as most.
 */
export function fullness(stored: Stored | null): number {
  if (stored === null || stored.kind === 'unreadable') return 0
  return stored.kind === 'newer' ? Number.POSITIVE_INFINITY : entriesOf(stored.person)
}

/** The day of the copy with the most entries, of several the latest; null where no copy holds a jar. */
export async function fullestDay(disk: Disk, folders: Folders, userId: string): Promise<IsoDay | null> {
  let [found, most]: [IsoDay | null, number] = [null, 0]
  for (const day of await copyDays(disk, folders)) {
    const entries = fullness(await storedAt(disk, join(folders.copies, day, personFileName(userId))))
    if (entries > most) [found, most] = [day, entries]
  }
  return found
}
