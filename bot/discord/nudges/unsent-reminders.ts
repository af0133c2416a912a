import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import type { Person } from '../../../store/person.ts'
import { StorageError } from '../../../store/storage-error.ts'
import { unsentOf, withoutUnsent } from '../../../store/unsent.ts'
import type { CallOutcome, Dispatch } from '../../chat/run/call-outcome.ts'

/** Says them itself. */
const SAYS_ITSELF = 'jar list'

type Asking = Pick<Dispatch, 'store' | 'userId' | 'assumedZone' | 'nowMs'>

/** An outcome as it is to be told, and the zone whose days it means; null where the store could not be asked. */
interface WithUnsent {
  readonly outcome: CallOutcome
  readonly zone: string | null
}

/**
 * The reply with the reminders that no place would take, said once; whatever else came of the command stays. Nothing is
 * written where there are none. Where the store fails they are said another time.
 */
export async function withUnsent(
  outcome: CallOutcome,
  { store, userId, assumedZone, nowMs }: Asking,
): Promise<WithUnsent> {
  try {
    const now = await store.read(userId)
    const zone = now.settings.zone ?? assumedZone
    if (!outcome.ok || outcome.path === SAYS_ITSELF || withoutUnsent(now) === null) return { outcome, zone }
    let kept: Person | null = null
    await store.update(userId, (person) => {
      const told = withoutUnsent(person)
      kept = told === null ? null : person
      return told
    })
    const asked = kept === null ? [] : unsentOf(kept)
    if (asked.length === 0) return { outcome, zone }
    const note = { group: 'notes', key: 'jars_unsent', values: { asked, today: isoDay(dayAt(zone, nowMs)) } } as const
    return { outcome: { ...outcome, reply: { ...outcome.reply, notes: [note, ...outcome.reply.notes] } }, zone }
  } catch (error) {
    if (error instanceof StorageError) return { outcome, zone: null }
    throw error
  }
}
