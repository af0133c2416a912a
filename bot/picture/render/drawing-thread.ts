import { parentPort } from 'node:worker_threads'
import { drawingHere, type PictureJob } from './draw.ts'
import { PictureError, type PictureFault } from './picture-error.ts'

/** What the thread answers to what it was sent, in the order that it was sent. */
export type PictureTold = { readonly png: Uint8Array } | { readonly fault: PictureFault; readonly why: string }

const draw = drawingHere()

async function painted(drawn: PictureJob): Promise<PictureTold> {
  try {
    return { png: await draw(drawn) }
  } catch (error) {
    if (!(error instanceof PictureError)) throw error
    return { fault: error.fault, why: String(error.cause) }
  }
}

let last: Promise<unknown> = Promise.resolve()
parentPort?.on('message', (drawn: PictureJob) => {
  last = last.then(async () => parentPort!.postMessage(await painted(drawn)))
})
