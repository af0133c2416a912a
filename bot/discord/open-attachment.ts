import { ChatError } from '../chat/chat-error.ts'
import type { OpenFile } from '../chat/given-file.ts'

/** What Discord tells of a file that came with a command. */
export interface Attached {
  readonly id: string
  readonly name: string
  /** Bytes. */
  readonly size: number
  readonly url: string
}

const FETCH_MS = 10_000

/** Where Discord keeps what people attach. */
const HOSTS = ['cdn.discordapp.com', 'media.discordapp.net']

const isDiscords = (address: string, api: string | null): boolean => {
  if (!URL.canParse(address)) return false
  const { protocol, hostname, port, origin } = new URL(address)
  if (api !== null && origin === new URL(api).origin) return true
  return protocol === 'https:' && port === '' && HOSTS.includes(hostname)
}

/** All that an answer holds, up to `mostBytes`; null where it is more. */
async function bytesOf(response: Response, mostBytes: number): Promise<Uint8Array | null> {
  const chunks: Uint8Array[] = []
  let length = 0
  for await (const chunk of response.body ?? []) {
    length += chunk.length
    if (length > mostBytes) return null
    chunks.push(chunk)
  }
  return Buffer.concat(chunks)
}

/**
 * Fetches a file that came with the command: nothing of one that Discord says is too big, and nothing from elsewhere than
 * where Discord keeps files.
 *
 * @param api - base address of Discord's REST where it is not Discord's own; files may come from there too
 */
export const openAttachment =
  (attached: readonly Attached[], api: string | null): OpenFile =>
  async (id, mostBytes) => {
    const file = attached.find((each) => each.id === id)
    if (file === undefined) throw new ChatError('bad_value', 'no_files_here', {})
    const { name, size, url } = file
    const tooBig = new ChatError('limit', 'file_too_big', { name, mostBytes })
    const unfetched = new ChatError('bad_value', 'file_not_fetched', { name })
    if (size > mostBytes) throw tooBig
    if (!isDiscords(url, api)) throw unfetched
    let bytes: Uint8Array | null
    try {
      const response = await fetch(url, { redirect: 'error', signal: AbortSignal.timeout(FETCH_MS) })
      if (!response.ok) throw unfetched
      bytes = await bytesOf(response, mostBytes)
    } catch {
      throw unfetched
    }
    if (bytes === null) throw tooBig
    return { name, bytes }
  }
