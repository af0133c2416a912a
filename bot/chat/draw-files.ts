import type { Words } from '../text/words.ts'
import type { Reply } from './reply.ts'
import { trace } from './trace.ts'

/** A file of a reply; without bytes where it could not be made. */
export interface DrawnFile {
  readonly name: string
  readonly mime: string
  readonly alt: string
  readonly bytes: Uint8Array | null
}

/** Makes the files of a reply, one after the other. Never throws: what fails is logged. */
export async function drawFiles(
  { files = [], kitchen }: Reply,
  words: Words,
  log: (text: string) => void,
): Promise<readonly DrawnFile[]> {
  const drawn: DrawnFile[] = []
  for (const file of files) {
    const { name, mime } = file
    try {
      const alt = words.say<'files'>(file.alt, kitchen)
      drawn.push({ name, mime, alt, bytes: await file.draw(words, kitchen) })
    } catch (error) {
      log(`${name}: ${trace(error)}`)
      drawn.push({ name, mime, alt: '', bytes: null })
    }
  }
  return drawn
}
