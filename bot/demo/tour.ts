import { mkdtempSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { createInterface } from 'node:readline/promises'
import { openStore } from '../../store/open/open-store.ts'
import { type DemoStage, playSeason } from './play-demo.ts'

export const noPause = async (): Promise<void> => {}

/** Waits for Enter, or until `ended`, where somebody reads along. */
export const enterFrom = (
  input: NodeJS.ReadStream,
  output: NodeJS.WriteStream,
  question: string,
  ended: AbortSignal,
): (() => Promise<void>) => {
  if (input.isTTY !== true || output.isTTY !== true) return noPause
  return async () => {
    const lines = createInterface({ input, output })
    // Ctrl-C ends the season, Ctrl-D goes on.
    lines.once('SIGINT', () => process.emit('SIGINT'))
    const closed = new Promise<void>((resolve) => lines.once('close', resolve))
    try {
      await Promise.race([lines.question(`\n${question} `, { signal: ended }), closed])
    } catch (error) {
      if ((error as Error).name !== 'AbortError') throw error
    } finally {
      lines.close()
    }
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
