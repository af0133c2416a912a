import type { Maintenance } from '../../store/maintenance.ts'
import { StorageError } from '../../store/storage-error.ts'
import type { Store } from '../../store/store.ts'
import { trace } from '../chat/trace.ts'
import { type ClosedPlaces, closedPlaces } from './closed-places.ts'
import type { Surface } from './delivery.ts'
import { withPulse } from './heartbeat.ts'
import { tick } from './tick.ts'

const EVERY_MINUTE = '* * * * *'
/** Machines sleep and start at odd hours; the copies of a night that was missed are made at the next start. */
const EVERY_NIGHT = '20 4 * * *'

/** A minute's pass that comes late is still run; the one after it says the rest. */
const LATE_MS = 55_000

/** Of a heartbeat that goes by no clock, and how many without a look are too many. */
const BEAT_MS = 30_000
const MOST_SILENT_BEATS = 3

const SILENT = { info() {}, warn() {}, error() {}, debug() {} }

export interface Reminding {
  readonly store: Pick<Store & Maintenance, 'read' | 'update' | 'claimDue' | 'isThere' | 'nightly' | 'heartbeat'>
  readonly surface: Surface
  /** Places found closed, where somebody else wants to know of them. */
  readonly closed?: ClosedPlaces
  /** When Discord was last heard of, for whoever looks from outside. */
  readonly heardMs?: () => number | null
  readonly now: () => number
  readonly assumedZone: string
  readonly log: (text: string) => void
  /** The store could not be worked on; told once, until it can again. */
  readonly complain: (error: StorageError) => void
}

/** Ends the reminding, once the pass that runs has ended. */
export type StopReminding = () => Promise<void>

/** One pass at a time; never throws. */
const passes = (reminding: Reminding) => {
  const { store, closed = closedPlaces(), now, assumedZone, log, complain } = reminding
  let complained: StorageError['problem'] | null = null
  const guarded = async (work: () => Promise<unknown>): Promise<void> => {
    try {
      // Where there is no store yet nothing is due, and looking for it would make one.
      if (!(await store.isThere())) return
      await work()
      complained = null
    } catch (error) {
      if (!(error instanceof StorageError)) return log(`reminders: ${trace(error)}`)
      if (error.problem !== complained) complain(error)
      complained = error.problem
    }
  }
  const pulse = withPulse(reminding)
  const pass = async (): Promise<void> => {
    await tick({ store: pulse.store, surface: pulse.surface, closed, nowMs: now(), assumedZone, log })
    await pulse.beat()
  }
  let running = Promise.resolve()
  let waiting = 0
  const inTurn = (work: () => Promise<unknown>) => (): Promise<void> => {
    waiting += 1
    running = running
      .then(() => guarded(work))
      .finally(() => {
        waiting -= 1
      })
    return running
  }
  return {
    remind: inTurn(pass),
    copy: inTurn(() => store.nightly()),
    isBusy: () => waiting > 0,
    ended: () => running,
  }
}

/**
 * Says at once what is due by now, then looks every minute, until it is stopped; copies at once and every night. The tasks
 * go by the clock, and would wait for an hour that a clock set back has already shown; so a heartbeat that goes by no clock
 * looks where they are silent for too long, and makes them anew.
 */
export async function startReminders(reminding: Reminding): Promise<StopReminding> {
  const { remind, copy, isBusy, ended } = passes(reminding)
  await remind()
  await copy()
  const { schedule } = await import('node-cron')
  const options = { noOverlap: true, missedExecutionTolerance: LATE_MS, suppressMissedWarning: true, logger: SILENT }
  let [silentBeats, isStopped] = [0, false]
  const look = (): Promise<void> => {
    silentBeats = 0
    return remind()
  }
  const scheduled = () => [schedule(EVERY_MINUTE, look, options), schedule(EVERY_NIGHT, copy, options)]
  let tasks = scheduled()
  const destroyed = async (): Promise<void> => {
    for (const task of tasks.splice(0)) await task.destroy()
  }
  const beat = async (): Promise<void> => {
    silentBeats += 1
    if (silentBeats < MOST_SILENT_BEATS || isBusy()) return
    void look()
    await destroyed()
    if (!isStopped) tasks = scheduled()
  }
  const heart = setInterval(beat, BEAT_MS)
  return async () => {
    isStopped = true
    clearInterval(heart)
    await destroyed()
    await ended()
  }
}
