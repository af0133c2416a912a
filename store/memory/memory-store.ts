import { nextDueMs } from '../due.ts'
import { entriesOf, NOBODY, type Person } from '../person.ts'
import { verifyPerson } from '../schema/verify-person.ts'
import { StorageError } from '../storage-error.ts'
import type { Store } from '../store.ts'
import { checkUserId } from '../user-id.ts'

interface DuePerson {
  readonly userId: string
  readonly dueMs: number
}

const earlierFirst = (one: DuePerson, other: DuePerson): number =>
  one.dueMs - other.dueMs || (one.userId < other.userId ? -1 : 1)

/** People in memory only: for the tests, and where nothing is to be kept. Obeys the same contract as the one on disk. */
export function memoryStore(assumedZone: string): Store {
  const people = new Map<string, Person>()
  const leases = new Map<string, number>()
  let isClosed = false
  let lastMs = Number.NEGATIVE_INFINITY
  const open = (): void => {
    if (isClosed) throw new StorageError('closed', {})
  }
  return {
    async read(userId) {
      open()
      checkUserId(userId)
      return people.get(userId) ?? NOBODY
    },
    async update(userId, change) {
      open()
      checkUserId(userId)
      const person = people.get(userId) ?? NOBODY
      const changed = change(person)
      if (changed === null) return person
      verifyPerson(changed, person)
      people.set(userId, changed)
      leases.delete(userId)
      return changed
    },
    async remove(userId) {
      open()
      checkUserId(userId)
      const jars = people.get(userId)?.jars ?? []
      people.delete(userId)
      leases.delete(userId)
      return { jars: jars.length, entries: entriesOf({ jars }), copies: 0 }
    },
    async claimDue(untilMs, limit, leaseMs) {
      open()
      const isBack = untilMs < lastMs
      lastMs = untilMs
      for (const [userId, endMs] of leases) if (isBack || endMs <= untilMs) leases.delete(userId)
      const due = [...people].flatMap(([userId, person]) => {
        const dueMs = nextDueMs(person, assumedZone, untilMs)
        return dueMs !== null && dueMs <= untilMs && !leases.has(userId) ? [{ userId, dueMs }] : []
      })
      const claimed = due.sort(earlierFirst).slice(0, limit)
      for (const { userId } of claimed) leases.set(userId, untilMs + leaseMs)
      return claimed.map(({ userId }) => userId)
    },
    async close() {
      isClosed = true
    },
  }
}
