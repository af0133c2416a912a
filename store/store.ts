import type { Person } from './person.ts'

/** What was erased of a person. */
export interface Removed {
  readonly jars: number
  readonly entries: number
  /** Nightly copies and files set aside. */
  readonly copies: number
}

/** People and their jars. Every failure is a `StorageError`; what was acknowledged survives it. */
export interface Store {
  /** As stored, or `NOBODY`. Needs no lock. */
  read(userId: string): Promise<Person>
  /**
   * Puts what `change` makes of the person in place, one change of a person after the other, and answers with it once it
   * is durable. `change` is pure, may be called again, and returns null where there is nothing to change; what it throws
   * comes out here, and nothing is changed. Throws `unsure` where it may have been kept or not; the next call makes durable
   * what is there before it answers, also where there is nothing to change.
   */
  update(userId: string, change: (person: Person) => Person | null): Promise<Person>
  /** Everything, copies included. */
  remove(userId: string): Promise<Removed>
  /**
   * People with something due by `untilMs`, the longest overdue first, at most `limit`. Nobody is named again before
   * `leaseMs` have passed since `untilMs`, or their state changed; a clock set back ends all leases.
   */
  claimDue(untilMs: number, limit: number, leaseMs: number): Promise<readonly string[]>
  /** Finishes what is being written and lets go of the folder. */
  close(): Promise<void>
}
