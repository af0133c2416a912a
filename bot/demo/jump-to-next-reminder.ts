import { nextDueMs } from '../../store/due.ts'
import type { Round } from '../reminders/remind.ts'
import { tick } from '../reminders/tick.ts'

/** Whoever is to be reminded, and with what; the clock apart. */
export type Passing = Omit<Round, 'nowMs'> & { readonly userId: string }

/**
 * A clock that runs by itself: jumps to the next instant at which something falls due, where that is by `untilMs`, and
 * reminds. The instant, or null where nothing is due until then.
 */
export async function remindNext({ userId, ...round }: Passing, untilMs: number): Promise<number | null> {
  const due = async (): Promise<number | null> => nextDueMs(await round.store.read(userId), round.assumedZone)
  const dueMs = await due()
  if (dueMs === null || dueMs > untilMs) return null
  await tick({ ...round, nowMs: dueMs })
  const nextMs = await due()
  if (nextMs !== null && nextMs <= dueMs) throw new Error('what was said is due again')
  return dueMs
}
