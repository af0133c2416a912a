import { copyChanged } from './disk/copies.ts'
import { type Disk, nodeDisk } from './disk/disk.ts'
import { dueScan } from './disk/due-scan.ts'
import { erase } from './disk/erase.ts'
import { folderLock } from './disk/folder-lock.ts'
import { foldersIn } from './disk/folders.ts'
import { personFiles } from './disk/person-files.ts'
import { type Status, writeStatus } from './disk/status.ts'
import { dueIndex } from './memory/due-index.ts'
import { NOBODY, type SetAside } from './person.ts'
import { queueByKey } from './queue.ts'
import { verifyPerson } from './schema/verify-person.ts'
import { StorageError } from './storage-error.ts'
import type { Store } from './store.ts'
import { checkUserId } from './user-id.ts'

export interface StoreOptions {
  /** Made when it is first written to. */
  readonly folder: string
  /** IANA name of the zone of who has not chosen one. */
  readonly assumedZone: string
  readonly nowMs: () => number
  /** Takes ids and the names of files and fields, nothing that was typed. */
  readonly log: (text: string) => void
  /** Told instead of `log` of a file set aside, where its owner is there to read it. */
  readonly tellSetAside?: (aside: SetAside) => void
  readonly disk?: Disk
}

export interface DiskStore extends Store {
  /** Takes the folder, made where it is missing, before there is anything to write. Throws `locked`. */
  hold(): Promise<void>
  /** To be called once a night: copies what changed since the last copy, seven days are kept. The number of files copied. */
  copyNightly(): Promise<number>
  /** For whoever looks from outside; not durable. */
  recordStatus(status: Status): Promise<void>
}

/** A clock is put right by so much now and then, which changes nothing that is due. */
const MOST_STEP_MS = 3_600_000

/** Keys of the queue that are nobody's id. */
const CLAIMS = '#claims'
const COPIES = '#copies'
const STATUS = '#status'

/**
 * People in a folder, a JSON file each. Nothing is read or made before the first call; the first that writes takes the
 * lock and keeps it until `close`. While the lock is not held, every `read` asks the file.
 */
export function openStore({ folder, assumedZone, nowMs, log, tellSetAside, disk = nodeDisk }: StoreOptions): DiskStore {
  const folders = foldersIn(folder)
  const queue = queueByKey()
  const lock = folderLock(disk, folders)
  const files = personFiles({ disk, folders, lock, nowMs, log, ...(tellSetAside && { tellSetAside }) })
  const index = dueIndex()
  let [isClosed, claimedMs] = [false, Number.NEGATIVE_INFINITY]

  const open = (): void => {
    if (isClosed) throw new StorageError('closed', {})
  }
  const read = (userId: string) => queue.inTurn(userId, () => files.read(userId))
  const scan = dueScan({ disk, folders, index, assumedZone, nowMs, read, isClosed: () => isClosed, log })

  return {
    async hold() {
      open()
      await lock.take()
    },
    async read(userId) {
      open()
      checkUserId(userId)
      return read(userId)
    },
    async update(userId, change) {
      open()
      checkUserId(userId)
      return queue.inTurn(userId, async () => {
        await lock.take()
        const person = await files.read(userId)
        const changed = change(person)
        if (changed === null) {
          await files.settle(userId)
          return person
        }
        verifyPerson(changed, person)
        await scan.follow(userId, changed, files.write(userId, changed))
        return changed
      })
    },
    async remove(userId) {
      open()
      checkUserId(userId)
      return queue.inTurn(userId, async () => {
        await lock.take()
        const { jars } = await files.read(userId)
        files.forget(userId)
        const erasing = erase(disk, folders, userId)
        await scan.follow(userId, NOBODY, erasing)
        const copies = await erasing
        return { jars: jars.length, entries: jars.reduce((sum, { entries }) => sum + entries.length, 0), copies }
      })
    },
    async claimDue(untilMs, limit, leaseMs) {
      open()
      return queue.inTurn(CLAIMS, async () => {
        await lock.take()
        if (untilMs < claimedMs - MOST_STEP_MS) scan.renew()
        claimedMs = untilMs
        await scan.settle()
        open()
        return index.claim(untilMs, limit, leaseMs)
      })
    },
    async copyNightly() {
      open()
      return queue.inTurn(COPIES, async () => {
        await lock.take()
        const today = new Date(nowMs()).toISOString().slice(0, 10)
        return copyChanged(disk, folders, today, async (userId, work) => {
          open()
          return queue.inTurn(userId, work)
        })
      })
    },
    async recordStatus(status) {
      open()
      return queue.inTurn(STATUS, async () => {
        await lock.take()
        await writeStatus(disk, folders, status)
      })
    },
    async close() {
      isClosed = true
      await queue.idle()
      await lock.release()
    },
  }
}
