/** Where a nudge stands. */
export interface SentNudge {
  readonly channelId: string
  readonly messageId: string
}

/** The last nudges of people, in memory only: those of before a start keep their buttons. */
export interface SentNudges {
  add(userId: string, nudge: SentNudge): void
  of(userId: string): readonly SentNudge[]
}

/** Of one person so many can still be open at once: a week's. */
const MOST_OF_ONE = 7
const MOST_PEOPLE = 10_000

export const sentNudges = (): SentNudges => {
  const known = new Map<string, readonly SentNudge[]>()
  return {
    of: (userId) => known.get(userId) ?? [],
    add(userId, nudge) {
      const before = (known.get(userId) ?? []).filter(({ messageId }) => messageId !== nudge.messageId)
      known.delete(userId)
      const [oldest] = known.keys()
      if (known.size >= MOST_PEOPLE && oldest !== undefined) known.delete(oldest)
      known.set(userId, [...before, nudge].slice(-MOST_OF_ONE))
    },
  }
}
