import { setTimeout as sleep } from 'node:timers/promises'

/** Time to glance at what was printed, ms; some seventy such make a season of less than twenty seconds. */
export const PAUSE_MS = 200

export const noPause = async (): Promise<void> => {}

/** Waits that long, or until `ended`, where somebody reads along. */
export const pauseFor = (isRead: boolean, ended: AbortSignal): (() => Promise<void>) => {
  if (!isRead) return noPause
  return async () => {
    await sleep(PAUSE_MS, undefined, { signal: ended }).catch((error: Error) => {
      if (error.name !== 'AbortError') throw error
    })
  }
}
