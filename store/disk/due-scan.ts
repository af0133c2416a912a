import { setImmediate as nextTurn } from 'node:timers/promises'
import { nextDueMs } from '../due.ts'
import type { DueIndex } from '../memory/due-index.ts'
import type { Person } from '../person.ts'
import { KNOWN_VERSION } from '../schema/read-stored.ts'
import { userIdOf } from '../user-id.ts'
import type { Disk } from './disk.ts'
import { ifThere } from './disk-failure.ts'
import { type Folders, personPath } from './folders.ts'
import { noText } from './stored-at.ts'

/** Characters read before others get their turn: a few milliseconds. */
const SLICE = 500_000

export interface ScanOptions {
  readonly disk: Disk
  readonly folders: Folders
  readonly index: DueIndex
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

/** Undefined where it cannot be told. */
function dueOf(person: Person, assumedZone: string, nowMs: number): number | null | undefined {
  try {
    const dueMs = nextDueMs(person, assumedZone, nowMs)
    return dueMs === null || Number.isFinite(dueMs) ? dueMs : undefined
  } catch {
    return undefined
  }
}

/** As it stands in a file of ours, unchecked; undefined for what has to be read with more care. */
function dueIn(text: string, assumedZone: string, nowMs: number): number | null | undefined {
  try {
    const person = JSON.parse(text) as Person
    return person.version === KNOWN_VERSION ? dueOf(person, assumedZone, nowMs) : undefined
  } catch {
    return undefined
  }
}

export function dueScan({ disk, folders, index, assumedZone, nowMs, read, isClosed, log }: ScanOptions): DueScan {
  const doubtful = new Set<string>()
  const logged = new Set<string>()
  let state: 'unasked' | 'asked' | 'listed' = 'unasked'

  const textOf = async (userId: string): Promise<string | null> => {
    const path = personPath(folders, userId)
    try {
      return await ifThere(path, async () => disk.readFileNow(path))
    } catch (error) {
      // `read` sets it aside.
      if (noText(error) !== null) return ''
      throw error
    }
  }

  /** How much was read. What fails stays in doubt and holds nobody else up. */
  const look = async (userId: string): Promise<number> => {
    try {
      const text = await textOf(userId)
      const found = text === null ? null : dueIn(text, assumedZone, nowMs())
      const dueMs = found === undefined ? nextDueMs(await read(userId), assumedZone, nowMs()) : found
      if (doubtful.delete(userId)) index.set(userId, dueMs)
      return text?.length ?? 0
    } catch (error) {
      if (!logged.has(userId)) log(`store: no reminders for ${userId}: ${error instanceof Error ? error.message : ''}`)
      logged.add(userId)
      return 0
    }
  }

  return {
    async follow(userId, person, writing) {
      // Meanwhile the disk is at work.
      let dueMs = state === 'unasked' ? undefined : dueOf(person, assumedZone, nowMs())
      try {
        await writing
        index.release(userId)
      } catch (error) {
        dueMs = undefined
        throw error
      } finally {
        if (dueMs !== undefined) {
          doubtful.delete(userId)
          index.set(userId, dueMs)
        } else if (state !== 'unasked') doubtful.add(userId)
      }
    },
    renew() {
      if (state === 'listed') state = 'asked'
    },
    async settle() {
      if (state !== 'listed') {
        state = 'asked'
        for (const name of (await ifThere(folders.users, () => disk.readdir(folders.users))) ?? []) {
          const userId = userIdOf(name)
          if (userId !== null) doubtful.add(userId)
        }
        state = 'listed'
      }
      let read = 0
      for (const userId of doubtful) {
        if (isClosed()) return
        read += await look(userId)
        if (read < SLICE) continue
        read = 0
        await nextTurn()
      }
    },
  }
}
