import { mkdtempSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'
import { openStore } from '../../store/open/open-store.ts'
import { type DemoStage, playSeason } from './play-demo.ts'

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

interface Tour extends Omit<DemoStage, 'store'> {
  /** Where a folder for a while may be made. */
  readonly parent: string
  readonly now: () => number
}

/** A season on disk, in a folder of its own that is gone afterwards. */
export async function tour({ parent, now, ...stage }: Tour): Promise<void> {
  const folder = mkdtempSync(join(parent, 'larderbell-season-'))
  const store = openStore({ folder, assumedZone: stage.season.zone, nowMs: now, log: stage.log })
  try {
    await playSeason({ ...stage, store })
  } finally {
    await store.close()
    rmSync(folder, { recursive: true, force: true })
  }
}
