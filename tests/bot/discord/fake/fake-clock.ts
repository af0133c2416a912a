const START_MS = Date.UTC(2026, 10, 25, 9)
const DISCORD_EPOCH_MS = 1_420_070_400_000
const COUNTER_BITS = 22n

/** Time of the fake: it stands still unless it is advanced, so that nothing is late because a machine is slow. */
export interface FakeClock {
  readonly nowMs: () => number
  readonly advance: (byMs: number) => void
  /** A new id, as Discord makes them: later ones are greater, and each tells its time. */
  readonly snowflake: () => string
}

/** @param baseMs - the clock the test has, if it has one; `advance` then goes ahead of it */
export const fakeClock = (baseMs: () => number = () => START_MS): FakeClock => {
  let aheadMs = 0
  let count = 0n
  const nowMs = (): number => baseMs() + aheadMs
  return {
    nowMs,
    advance: (byMs) => {
      aheadMs += byMs
    },
    snowflake: () => {
      count += 1n
      return String((BigInt(Math.floor(nowMs()) - DISCORD_EPOCH_MS) << COUNTER_BITS) + count)
    },
  }
}
