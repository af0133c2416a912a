import { setImmediate as nextTurn } from 'node:timers/promises'
import { nextDueMs } from '../due.ts'
import type { DueIndex } from '../due-index.ts'
import type { Person } from '../person.ts'
import { userIdOf } from '../user-id.ts'
import type { Disk } from './disk.ts'
import { ifThere } from './disk-failure.ts'
import { type Folders, personPath } from './folders.ts'
import type { PersonTexts } from './person-text.ts'
import { noText } from './stored-at.ts'

/** Bytes read before others get their turn: a few milliseconds, where all of them are parsed. */
const SLICE_BYTES = 500_000

export interface ScanOptions {
  readonly disk: Disk
  readonly folders: Folders
  readonly index: DueIndex
  readonly texts: PersonTexts
  readonly assumedZone: string
  readonly nowMs: () => number
  /** As stored, checked, and set aside where it cannot be read. */
  readonly read: (userId: string) => Promise<Person>
  readonly isClosed: () => boolean
  readonly log: (text: string) => void
}

/** Keeps the index by what is in the files. Before it is first asked for, it costs nothing. */
export interface DueScan {
  /** Waits for `writing`, which makes `person` what is stored, and keeps the index by how it ends. */
  follow(userId: string, person: Person, writing: Promise<unknown>): Promise<void>
  /** Reads whatever is in doubt, everybody the first time; one call after the other. Stops early when the store closes. */
  settle(): Promise<void>
  /** Everybody is in doubt: what was due depends on what the clock says. */
  renew(): void
}

export function dueScan({
  disk,
  folders,
  index,
  texts,
  assumedZone,
  nowMs,
  read,
  isClosed,
  log,
}: ScanOptions): DueScan {
  const doubtful = new Set<string>()
  const logged = new Set<string>()
  let state: 'unasked' | 'asked' | 'listed' = 'unasked'

  const bytesOf = async (userId: string): Promise<Buffer | null> => {
    const path = personPath(folders, userId)
    try {
      return await ifThere(path, async () => disk.readBytesNow(path))
    } catch (error) {
      // `read` sets it aside.
      if (noText(error) !== null) return Buffer.alloc(0)
      throw error
    }
  }

  /** How much was read. What fails stays in doubt and holds nobody else up. */
  const look = async (userId: string): Promise<number> => {
    try {
      const bytes = await bytesOf(userId)
      const found = bytes === null ? null : texts.dueMsIn(bytes, nowMs())
      const dueMs = found === undefined ? nextDueMs(await read(userId), assumedZone, nowMs()) : found
      if (doubtful.delete(userId)) index.set(userId, dueMs)
      return bytes?.length ?? 0
    } catch (error) {
      if (!logged.has(userId)) log(`store: no reminders for ${userId}: ${error instanceof Error ? error.message : ''}`)
      logged.add(userId)
      return 0
    }
  }

  return {
    async follow(userId, person, writing) {
      // Meanwhile the disk is at work.
      let dueMs = state === 'unasked' ? undefined : texts.dueMsOf(person, nowMs())
      let isWritten = false
      try {
        await writing
        isWritten = true
      } catch (error) {
        dueMs = undefined
        throw error
      } finally {
        if (dueMs !== undefined) {
          doubtful.delete(userId)
          index.set(userId, dueMs)
        } else if (state !== 'unasked') doubtful.add(userId)
        if (isWritten) index.release(userId)
      }
    },
    renew() {
      if (state === 'listed') state = 'asked'
    },
    async settle() {
      if (state !== 'listed') {
        state = 'asked'
        const names = (await ifThere(folders.users, () => disk.readdir(folders.users))) ?? []
        // In order, so that those due at one instant need no sorting by name at every look.
        for (const name of names.toSorted()) {
          const userId = userIdOf(name)
          if (userId !== null) doubtful.add(userId)
        }
        state = 'listed'
      }
      let read = 0
      for (const userId of doubtful) {
        if (isClosed()) return
        read += await look(userId)
        if (read < SLICE_BYTES) continue
        read = 0
        await nextTurn()
      }
    },
  }
}
