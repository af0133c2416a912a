import type { IsoDay } from '../core/quantity/time/calendar-day.ts'

/** What the process that works on a store last did, for whoever looks from outside. */
export interface Status {
  /** When it last went through what is due. */
  readonly tickMs: number
  /** When a reminder last arrived; null before the first. */
  readonly sentMs: number | null
  /** When Discord last acknowledged the connection that it has been silent to for longest; null where there is none. */
  readonly heardMs: number | null
}

export type StatusRead =
  | { readonly kind: 'none' }
  | { readonly kind: 'unreadable' }
  | { readonly kind: 'status'; readonly status: Status }

/** The process that holds a store. */
export interface HeldBy {
  readonly pid: number
  readonly host: string
  /** False for a process of another host or container: nothing is known of it, so it may run. */
  readonly isHere: boolean
  /** False where it ended without letting go. */
  readonly mayRun: boolean
  readonly sinceMs: number
}

/** What this process may do with a store: `own`, and nobody else may look in; `shared`, others may; `read_only`. */
export type Rights = 'own' | 'shared' | 'read_only'

/** How a store is, without a name of anybody's. */
export interface StoreFacts {
  readonly rights: Rights
  readonly holder: HeldBy | null
  readonly people: number
  /** Jars whose start was undone are none. */
  readonly jars: { readonly running: number; readonly all: number }
  /** People whose data cannot be read, or was written by a newer Larderbell. */
  readonly unreadable: number
  /** How often something that could not be read, or was replaced, was set aside and kept. */
  readonly setAside: number
  readonly newestCopy: IsoDay | null
  readonly nextDueMs: number | null
  readonly status: StatusRead
}

/** A copy that was put back. */
export interface PutBack {
  readonly jars: number
  readonly entries: number
  /** Where what stood in its place is kept; null where nothing stood there. */
  readonly keptAt: string | null
}

/** What whoever runs the bot does with a store, beside what people do. Every failure is a `StorageError`. */
export interface Maintenance {
  /** Whether there is a store yet; asking makes none. */
  isThere(): Promise<boolean>
  /** Takes the store for this process before there is anything to write. Throws `locked`. */
  hold(): Promise<void>
  /** To be called once a night: copies whoever changed since the last copy; seven days are kept. The number of people copied. */
  nightly(): Promise<number>
  /** Leaves the status for `inspect` to find, from any process. A power cut may lose it. */
  heartbeat(status: Status): Promise<void>
  /** Reads everything, needs no lock, changes nothing; null where there is no store yet. */
  inspect(): Promise<StoreFacts | null>
  /**
   * Puts the copy of a day in a person's place, checked and brought to the newest version, and keeps what stood there.
   * Throws `locked`, `no_copy`, `bad_copy`.
   */
  putBack(userId: string, day: IsoDay): Promise<PutBack>
}
