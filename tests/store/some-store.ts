import type { IsoDay } from '../../core/quantity/time/calendar-day.ts'
import type { Disk } from '../../store/disk/disk.ts'
import type { Maintenance, PutBack } from '../../store/maintenance.ts'
import { openStore } from '../../store/open/open-store.ts'
import type { Person, SetAside } from '../../store/person.ts'
import { readStored } from '../../store/schema/read-stored.ts'
import type { Store } from '../../store/store.ts'

export const NOW_MS = Date.UTC(2026, 10, 25, 10, 30)

export interface Setup {
  readonly disk?: Disk
  readonly rules?: string | null
  readonly nowMs?: () => number
  readonly log?: (text: string) => void
  readonly tellSetAside?: (aside: SetAside) => void
}

/** A store on disk. */
export type StoreOnDisk = Store & Maintenance

export const ZONE = 'Europe/Rome'

/** The store on disk as most tests want it. */
export const storeIn = (
  folder: string,
  { nowMs = () => NOW_MS, log = () => {}, rules = 'today', ...others }: Setup = {},
): StoreOnDisk => openStore({ folder, assumedZone: ZONE, rules, nowMs, log, ...others })

/** As `doctor restore` does. */
export async function restoreCopy(
  { folder, nowMs, ...others }: { readonly folder: string; readonly nowMs: number; readonly disk?: Disk },
  userId: string,
  day: IsoDay,
): Promise<PutBack> {
  const store = storeIn(folder, { nowMs: () => nowMs, ...others })
  try {
    return await store.putBack(userId, day)
  } finally {
    await store.close()
  }
}

/** The person that a text of a file holds. */
export function personIn(text: string): Person {
  const stored = readStored(text)
  if (stored.kind !== 'person') throw new Error(`no person: ${JSON.stringify(stored)}`)
  return stored.person
}
