import type { IsoDay } from '../../core/quantity/time/calendar-day.ts'
import type { Disk } from './disk.ts'
import { ifThere } from './disk-failure.ts'
import type { Folders } from './folders.ts'

const DAY = /^\d{4}-\d{2}-\d{2}$/

export const isCopyDay = (text: string): boolean => DAY.test(text)

/** The days of which there are copies, the latest first. */
export async function copyDays(disk: Disk, { copies }: Folders): Promise<readonly IsoDay[]> {
  const names = (await ifThere(copies, () => disk.readdir(copies))) ?? []
  return names.filter(isCopyDay).toSorted().toReversed()
}
