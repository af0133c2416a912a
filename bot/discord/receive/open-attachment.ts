import { ChatError } from '../../chat/chat-error.ts'
import type { OpenFile } from '../../chat/given-file.ts'
import { fetchFile } from '../rest/fetch-file.ts'

/** What Discord tells of a file that came with a command. */
export interface Attached {
  readonly id: string
  readonly name: string
  /** Bytes. */
  readonly size: number
  readonly url: string
}

/**
 * Fetches a file that came with the command: nothing of one that Discord says is too big.
 *
 * @param api - as `fetchFile` takes it
 */
export const openAttachment =
  (attached: readonly Attached[], api: string | null): OpenFile =>
  async (id, mostBytes) => {
    const file = attached.find((each) => each.id === id)
    if (file === undefined) throw new ChatError('bad_value', 'no_files_here', {})
    const { name, size, url } = file
    const bytes = size > mostBytes ? 'too_big' : await fetchFile(url, mostBytes, api)
    if (bytes === 'too_big') throw new ChatError('limit', 'file_too_big', { name, mostBytes })
    if (bytes === 'unfetched') throw new ChatError('bad_value', 'file_not_fetched', { name })
    return { name, bytes }
  }
