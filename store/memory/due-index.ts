import { timeHeap } from './time-heap.ts'

/** When to look at each person next, and who was named and is to be left alone for a while. Never the truth. */
export interface DueIndex {
  /** Null: nothing to wait for. A lease stays. */
  set(userId: string, dueMs: number | null): void
  /** Their state changed, so they may be named again. */
  release(userId: string): void
  /** See `Store.claimDue`. */
  claim(untilMs: number, limit: number, leaseMs: number): readonly string[]
}

export function dueIndex(): DueIndex {
  const dueMsOf = new Map<string, number>()
  const free = timeHeap()
  const leased = timeHeap()
  let lastMs = Number.NEGATIVE_INFINITY

  const release = (userId: string): void => {
    if (!leased.has(userId)) return
    leased.delete(userId)
    const dueMs = dueMsOf.get(userId)
    if (dueMs !== undefined) free.set(userId, dueMs)
  }

  return {
    set(userId, dueMs) {
      if (dueMs === null) {
        dueMsOf.delete(userId)
        free.delete(userId)
        return
      }
      dueMsOf.set(userId, dueMs)
      if (!leased.has(userId)) free.set(userId, dueMs)
    },
    release,
    claim(untilMs, limit, leaseMs) {
      // After a clock that ran ahead was set back, its leases would last until it is there again.
      const isBack = untilMs < lastMs
      lastMs = untilMs
      for (
        let first = leased.earliest();
        first !== null && (isBack || first.atMs <= untilMs);
        first = leased.earliest()
      ) {
        release(first.key)
      }
      const claimed: string[] = []
      while (claimed.length < limit) {
        const first = free.earliest()
        if (first === null || first.atMs > untilMs) break
        free.delete(first.key)
        claimed.push(first.key)
        leased.set(first.key, untilMs + leaseMs)
      }
      return claimed
    },
  }
}
