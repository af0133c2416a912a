import { pause, type StartTimer } from './timeout.ts'

/**
 * Discord takes 50 requests a second of a bot. So far apart, no second of any clock holds more than 41 of these, and the
 * rest is left for what people ask meanwhile. discord.js counts seconds of its own, which begin at other moments than
 * Discord's: alone it runs into the limit.
 */
export const APART_MS = 25

/** Resolves when it is one's turn, in order. */
export type Pace = () => Promise<void>

export const newPace = (apartMs: number, after: StartTimer): Pace => {
  let nextMs = Number.NEGATIVE_INFINITY
  return async () => {
    const nowMs = performance.now()
    const atMs = Math.max(nowMs, nextMs)
    nextMs = atMs + apartMs
    if (atMs > nowMs) await pause(atMs - nowMs, after)
  }
}
