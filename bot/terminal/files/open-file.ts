import { constants } from 'node:fs'
import { open } from 'node:fs/promises'
import { homedir } from 'node:os'
import { basename, join, resolve } from 'node:path'
import { ChatError } from '../../chat/chat-error.ts'
import type { OpenFile } from '../../chat/given-file.ts'

const faultOf = (error: unknown, typed: string): ChatError => {
  const { code } = error as NodeJS.ErrnoException
  if (code === 'ENOENT' || code === 'ENOTDIR' || code === 'ENAMETOOLONG' || code === 'ERR_INVALID_ARG_VALUE') {
    return new ChatError('not_found', 'file_not_found', { typed, folder: process.cwd() })
  }
  const why = code === 'EACCES' || code === 'EPERM' ? 'rights' : 'failed'
  return new ChatError('bad_value', 'file_unreadable', { typed, why })
}

/** `~/` is the home of whoever started the program, as in a shell. */
const pathOf = (typed: string): string => (typed.startsWith('~/') ? join(homedir(), typed.slice(2)) : resolve(typed))

/** Reads a file of this machine; nothing of one that is too big, and nothing that is no plain file. */
export const openFile: OpenFile = async (typed, mostBytes) => {
  const path = pathOf(typed)
  try {
    // What waits for somebody to write into it must not hold the chat up.
    const file = await open(path, constants.O_RDONLY | constants.O_NONBLOCK)
    try {
      if (!(await file.stat()).isFile()) throw new ChatError('bad_value', 'file_unreadable', { typed, why: 'no_file' })
      const read = Buffer.alloc(mostBytes + 1)
      let length = 0
      for (let more = 1; more > 0 && length < read.length; length += more) {
        more = (await file.read(read, length, read.length - length)).bytesRead
      }
      if (length > mostBytes) throw new ChatError('limit', 'file_too_big', { name: basename(path), mostBytes })
      return { name: basename(path), bytes: read.subarray(0, length) }
    } finally {
      await file.close()
    }
  } catch (error) {
    throw error instanceof ChatError ? error : faultOf(error, typed)
  }
}
