/** Commands that one person may send within the span. */
const MOST = 30
const SPAN_MS = 60_000

export interface Rate {
  /** Counts a command; answers with the seconds to wait before it is taken, 0 where it is. One that is not is not counted. */
  take(userId: string, nowMs: number): number
  /** People of whom something is remembered: those who sent something within the span. */
  size(): number
}

/** Thirty commands a minute for everybody, in any sixty seconds. */
export const newRate = (): Rate => {
  /** Instants by person; whoever was taken last stands last. */
  const taken = new Map<string, readonly number[]>()
  const forget = (nowMs: number): void => {
    for (const [userId, instants] of taken) {
      const age = nowMs - instants.at(-1)!
      // A clock that was put back: what lies ahead would never pass.
      if (age >= 0 && age < SPAN_MS) return
      taken.delete(userId)
    }
  }
  return {
    take(userId, nowMs) {
      forget(nowMs)
      const recent = (taken.get(userId) ?? []).filter((ms) => ms <= nowMs && nowMs - ms < SPAN_MS)
      if (recent.length >= MOST) return Math.max(1, Math.ceil((recent[0]! + SPAN_MS - nowMs) / 1000))
      taken.delete(userId)
      taken.set(userId, [...recent, nowMs])
      return 0
    },
    size: () => taken.size,
  }
}
