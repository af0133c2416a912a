import type { StoreFacts } from '../../store/maintenance.ts'
import type { ReminderVerdict } from '../text/doctor-text.ts'

/**
 * Reminders look every minute; one that missed three is not well. Discord acknowledges every 41 seconds, and what it did is
 * written down every minute.
 */
const MOST_MS = 3 * 60_000

/**
 * How reminders are, by when they last went through what is due; of a process that began later, by when it began. A bot
 * that crashed lets go of the folder like one that was stopped, so a free folder excuses no old tick. One that ticks but does
 * not hear of Discord answers nobody there.
 */
export function verdictOn(facts: Pick<StoreFacts, 'holder' | 'status'> | null, nowMs: number): ReminderVerdict {
  if (facts === null) return 'empty'
  const { holder, status } = facts
  const runningSinceMs = holder?.mayRun === true ? holder.sinceMs : null
  const isFresh = (ms: number): boolean => Math.abs(nowMs - ms) <= MOST_MS
  if (status.kind === 'status' && isFresh(status.status.tickMs)) {
    if (runningSinceMs === null) return 'left'
    const { heardMs } = status.status
    return heardMs === null || isFresh(heardMs) ? 'well' : 'deaf'
  }
  if (runningSinceMs !== null) return isFresh(runningSinceMs) ? 'starting' : 'stuck'
  if (status.kind === 'none') return 'idle'
  if (status.kind === 'unreadable') return 'unknown'
  return status.status.tickMs > nowMs ? 'ahead' : 'stopped'
}

/** Whether nothing has to be done about it. */
export const isFine = (verdict: ReminderVerdict): boolean =>
  ['well', 'left', 'starting', 'empty', 'idle'].includes(verdict)
