import { copyChanged } from '../disk/copies.ts'
import { type Disk, nodeDisk } from '../disk/disk.ts'
import { ifThere } from '../disk/disk-failure.ts'
import { dueScan } from '../disk/due-scan.ts'
import { erase } from '../disk/erase.ts'
import { folderLock } from '../disk/folder-lock.ts'
import { foldersIn } from '../disk/folders.ts'
import { inspectFolder } from '../disk/inspect-folder.ts'
import { personFiles } from '../disk/person-files.ts'
import { personTexts } from '../disk/person-text.ts'
import { copiedPerson, replaceFile } from '../disk/restore-copy.ts'
import { writeStatus } from '../disk/status.ts'
import { dueIndex } from '../due-index.ts'
import type { Maintenance } from '../maintenance.ts'
import { entriesOf, NOBODY, type SetAside } from '../person.ts'
import { queueByKey } from '../queue.ts'
import { verifyPerson } from '../schema/verify-person.ts'
import { StorageError } from '../storage-error.ts'
import type { Store } from '../store.ts'
import { checkUserId } from '../user-id.ts'

export interface StoreOptions {
  /** Made at the first write. */
  readonly folder: string
  /** IANA name of the zone of who has not chosen one. */
  readonly assumedZone: string
  /**
   * Names the program's rules of reminders, by another name where they may be others. What a file says of its next reminder
   * is believed under the same name only; never where there is none.
   */
  readonly rules?: string | null
  readonly nowMs: () => number
  /** Takes ids and the names of files and fields, nothing that was typed. */
  readonly log: (text: string) => void
  /** Told instead of `log` of a file set aside, where its owner is there to read it. */
  readonly tellSetAside?: (aside: SetAside) => void
  readonly disk?: Disk
}

/** Clocks are put right by up to this much now and then, which changes nothing that is due. */
const MOST_STEP_MS = 3_600_000

/** Files that a night writes anew for their stamps' sake: so many take a few seconds, and reminders wait meanwhile. */
const MOST_RENEWED = 1000

/** Keys of the queue that can be nobody's id. */
const CLAIMS = '#claims'
const COPIES = '#copies'
const STATUS = '#status'

/**
 * People in a folder, a JSON file each. Nothing is read or made before the first call; the first that writes takes the
 * lock and keeps it until `close`. While the lock is not held, every `read` asks the file.
 */
export function openStore(options: StoreOptions): Store & Maintenance {
  const { folder, assumedZone, rules = null, nowMs, log, tellSetAside, disk = nodeDisk } = options
  const folders = foldersIn(folder)
  const queue = queueByKey()
  const lock = folderLock(disk, folders)
  const texts = personTexts({ rules, assumedZone })
  const files = personFiles({ disk, folders, lock, texts, nowMs, log, ...(tellSetAside && { tellSetAside }) })
  const index = dueIndex()
  let [isClosed, claimedMs] = [false, Number.NEGATIVE_INFINITY]

  const open = (): void => {
    if (isClosed) throw new StorageError('closed', {})
  }
  const read = (userId: string) => queue.inTurn(userId, () => files.read(userId))
  const scan = dueScan({ disk, folders, index, texts, assumedZone, nowMs, read, isClosed: () => isClosed, log })

  return {
    async isThere() {
      open()
      return (await ifThere(folder, () => disk.readdir(folder))) !== null
    },
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
        return { jars: jars.length, entries: entriesOf({ jars }), copies }
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
    async nightly() {
      open()
      return queue.inTurn(COPIES, async () => {
        await lock.take()
        const today = new Date(nowMs()).toISOString().slice(0, 10)
        let renewed = 0
        return copyChanged(disk, folders, today, async (userId, work) => {
          open()
          return queue.inTurn(userId, async () => {
            if (renewed < MOST_RENEWED && (await files.renewStamp(userId))) renewed += 1
            return work()
          })
        })
      })
    },
    async heartbeat(status) {
      open()
      return queue.inTurn(STATUS, async () => {
        await lock.take()
        await writeStatus(disk, folders, status)
      })
    },
    inspect: () => inspectFolder(folder, assumedZone, disk),
    async putBack(userId, day) {
      open()
      checkUserId(userId)
      return queue.inTurn(userId, async () => {
        const person = await copiedPerson(disk, folders, userId, day)
        await lock.take()
        files.forget(userId)
        const replacing = replaceFile(disk, folders, { userId, file: texts.bytesOf(person), nowMs: nowMs() })
        await scan.follow(userId, person, replacing)
        return { jars: person.jars.length, entries: entriesOf(person), keptAt: await replacing }
      })
    },
    async close() {
      isClosed = true
      await queue.idle()
      await lock.release()
    },
  }
}
