const MINUTE_MS = 60_000
const DAY_MS = 86_400_000

/** How long a nudge on its way is left alone before anybody asks what became of it. */
export const SENDING_MS = 2 * MINUTE_MS

export const LONGEST_PAUSE_MS = 60 * MINUTE_MS

/** From failing once (attempt 1) to trying again: 1, 2, 4 … up to 60 minutes. */
export const pauseMs = (attempts: number): number =>
  Math.min(LONGEST_PAUSE_MS, MINUTE_MS * 2 ** Math.min(attempts - 1, 6))

/** After a day of failures nobody tries any more. */
export const isGivenUp = (madeMs: number, nowMs: number): boolean => nowMs - madeMs >= DAY_MS

/** A time to come back to; one further off than any pause was set before the clock jumped back, and has come as well. */
export const hasCome = (nextMs: number, nowMs: number): boolean => nextMs <= nowMs || nextMs - nowMs > LONGEST_PAUSE_MS
