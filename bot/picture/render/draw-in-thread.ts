import { existsSync } from 'node:fs'
import { Worker } from 'node:worker_threads'
import { type Draw, drawingHere, type PictureJob } from './draw.ts'
import type { PictureTold } from './drawing-thread.ts'
import { PictureError } from './picture-error.ts'

/**
 * Draws in a thread of its own, begun with the first picture: a picture has some megabytes of pixels, and collecting them
 * where a hundred megabytes of other things live took a quarter of a second of everybody's time, measured by `npm run bench`.
 */
export function drawingIn(script: string): Draw {
  let thread: Worker | null = null
  const waiting: ((told: PictureTold) => void)[] = []
  const begin = (): Worker => {
    const begun = new Worker(script)
    begun.on('message', (told: PictureTold) => {
      waiting.shift()?.(told)
      if (waiting.length === 0) begun.unref()
    })
    const fail = (why: unknown): void => {
      // The end of a thread that failed comes after its error, when another may draw already.
      if (thread !== begun) return
      thread = null
      for (const tell of waiting.splice(0)) tell({ fault: 'not_drawn', why: String(why) })
    }
    begun.on('error', fail)
    begun.on('exit', fail)
    return begun
  }
  const here = drawingHere()
  return async (drawn: PictureJob) => {
    // A newer bot that was started from the same folder has cleared it away.
    if (thread === null && !existsSync(script)) return here(drawn)
    thread ??= begin()
    thread.ref()
    const told = await new Promise<PictureTold>((resolve) => {
      waiting.push(resolve)
      thread!.postMessage(drawn)
    })
    if ('fault' in told) throw new PictureError(told.fault, told.why)
    return Buffer.from(told.png)
  }
}
