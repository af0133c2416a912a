import type { Disk } from '../../store/disk/disk.ts'
import { type DiskStore, openStore } from '../../store/open-store.ts'
import type { SetAside } from '../../store/person.ts'

export const NOW_MS = Date.UTC(2026, 10, 25, 10, 30)

export interface Setup {
  readonly disk?: Disk
  readonly nowMs?: () => number
  readonly log?: (text: string) => void
  readonly tellSetAside?: (aside: SetAside) => void
}

/** The store on disk as most tests want it. */
export const storeIn = (folder: string, { nowMs = () => NOW_MS, log = () => {}, ...others }: Setup = {}): DiskStore =>
  openStore({ folder, assumedZone: 'Europe/Rome', nowMs, log, ...others })
