/** When to look at each person next, and who was named and is to be left alone for a while. Never the truth. */
export interface DueIndex {
  /** Null where there is nothing to wait for. A lease stays. */
  set(userId: string, dueMs: number | null): void
  /** Ends a lease, as their state changed. */
  release(userId: string): void
  /** See `Store.claimDue`. */
  claim(untilMs: number, limit: number, leaseMs: number): readonly string[]
}

type DuePerson = readonly [userId: string, dueMs: number]

const earlierFirst = ([id, dueMs]: DuePerson, [otherId, otherMs]: DuePerson): number =>
  dueMs - otherMs || (id < otherId ? -1 : 1)

/** Looks through everybody when somebody has fallen due since the last look, and names them from what it found then. */
export function dueIndex(): DueIndex {
  const dueMsOf = new Map<string, number>()
  const leaseEndMsOf = new Map<string, number>()
  /** Who was due at the last look, the longest overdue first; what has changed since is seen when their turn comes. */
  let waiting: Iterator<DuePerson> = [].values()
  /** From this instant on somebody is due whom the last look did not find. */
  let newDueMs = Number.POSITIVE_INFINITY
  let lastMs = Number.NEGATIVE_INFINITY

  const release = (userId: string): void => {
    if (leaseEndMsOf.delete(userId)) newDueMs = Math.min(newDueMs, dueMsOf.get(userId) ?? Number.POSITIVE_INFINITY)
  }

  const look = (untilMs: number): void => {
    const due: DuePerson[] = []
    newDueMs = Number.POSITIVE_INFINITY
    for (const [userId, dueMs] of dueMsOf) {
      if (leaseEndMsOf.has(userId)) continue
      if (dueMs <= untilMs) due.push([userId, dueMs])
      else newDueMs = Math.min(newDueMs, dueMs)
    }
    waiting = due.sort(earlierFirst).values()
  }

  return {
    set(userId, dueMs) {
      if (dueMs === null) dueMsOf.delete(userId)
      else {
        dueMsOf.set(userId, dueMs)
        newDueMs = Math.min(newDueMs, dueMs)
      }
    },
    release,
    claim(untilMs, limit, leaseMs) {
      // After a clock that ran ahead was set back, its leases would last until it is there again.
      const isBack = untilMs < lastMs
      lastMs = untilMs
      for (const [userId, endMs] of leaseEndMsOf) if (isBack || endMs <= untilMs) release(userId)
      if (isBack || newDueMs <= untilMs) look(untilMs)
      const claimed: string[] = []
      while (claimed.length < limit) {
        const { value: first, done } = waiting.next()
        if (done) break
        const [userId, dueMs] = first
        if (dueMsOf.get(userId) !== dueMs) continue
        claimed.push(userId)
        leaseEndMsOf.set(userId, untilMs + leaseMs)
      }
      return claimed
    },
  }
}
