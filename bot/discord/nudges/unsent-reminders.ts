import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import type { Person } from '../../../store/person.ts'
import { StorageError } from '../../../store/storage-error.ts'
import { unsentOf, withoutUnsent } from '../../../store/unsent.ts'
import type { Dispatch, Outcome } from '../../chat/execute.ts'

/** Says them itself. */
const SAYS_ITSELF = 'jar list'

type Asking = Pick<Dispatch, 'store' | 'userId' | 'assumedZone' | 'nowMs'>

/**
 * The reply with the reminders that no place would take, said once; whatever else came of the command stays. Nothing is
 * written where there are none. Where the store fails they are said another time.
 */
export async function withKept(outcome: Outcome, { store, userId, assumedZone, nowMs }: Asking): Promise<Outcome> {
  if (!outcome.ok || outcome.path === SAYS_ITSELF) return outcome
  try {
    let kept: Person | null = null
    if (withoutUnsent(await store.read(userId)) === null) return outcome
    await store.update(userId, (person) => {
      const told = withoutUnsent(person)
      kept = told === null ? null : person
      return told
    })
    if (kept === null) return outcome
    const asked = unsentOf(kept)
    if (asked.length === 0) return outcome
    const today = isoDay(dayAt((kept as Person).settings.zone ?? assumedZone, nowMs))
    const note = { group: 'notes', key: 'jars_unsent', values: { asked, today } } as const
    return { ...outcome, reply: { ...outcome.reply, notes: [note, ...outcome.reply.notes] } }
  } catch (error) {
    if (error instanceof StorageError) return outcome
    throw error
  }
}
