import { mkdtempSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { openStore } from '../../store/open/open-store.ts'
import { type DemoStage, playSeason } from './play-demo.ts'

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
