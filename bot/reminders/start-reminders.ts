import type { DiskStore } from '../../store/open-store.ts'
import { StorageError } from '../../store/storage-error.ts'
import { trace } from '../chat/trace.ts'
import { type ClosedPlaces, closedPlaces } from './closed-places.ts'
import { withPulse } from './pulse.ts'
import type { Surface } from './surface.ts'
import { tick } from './tick.ts'

const EVERY_MINUTE = '* * * * *'
/** Machines sleep and start at odd hours; the copies of a night that was missed are made at the next start. */
const EVERY_NIGHT = '20 4 * * *'

/** A minute's pass that comes late is still run; the one after it says the rest. */
const LATE_MS = 55_000

const SILENT = { info() {}, warn() {}, error() {}, debug() {} }

export interface Reminding {
  readonly store: Pick<DiskStore, 'read' | 'update' | 'claimDue' | 'copyNightly' | 'recordStatus'>
  readonly surface: Surface
  /** Places found closed, where somebody else wants to know of them. */
  readonly closed?: ClosedPlaces
  readonly now: () => number
  readonly assumedZone: string
  readonly log: (text: string) => void
  /** False as long as there is no folder of data: then nothing is due, and looking must not make one. */
  readonly hasData: () => boolean
  /** The folder could not be worked on; told once, until it can again. */
  readonly complain: (error: StorageError) => void
}

/** Ends the reminding, once the pass that runs has ended. */
export type StopReminding = () => Promise<void>

/** One pass at a time; never throws. */
const passes = ({ store, surface, closed = closedPlaces(), now, assumedZone, log, hasData, complain }: Reminding) => {
  let complained: StorageError['problem'] | null = null
  const guarded = async (work: () => Promise<unknown>): Promise<void> => {
    if (!hasData()) return
    try {
      await work()
      complained = null
    } catch (error) {
      if (!(error instanceof StorageError)) return log(`reminders: ${trace(error)}`)
      if (error.problem !== complained) complain(error)
      complained = error.problem
    }
  }
  const pulse = withPulse({ store, surface, now, log })
  const pass = async (): Promise<void> => {
    await tick({ store: pulse.store, surface: pulse.surface, closed, nowMs: now(), assumedZone, log })
    await pulse.beat()
  }
  let running = Promise.resolve()
  const inTurn = (work: () => Promise<unknown>) => (): Promise<void> => {
    running = running.then(() => guarded(work))
    return running
  }
  return {
    remind: inTurn(pass),
    copy: inTurn(() => store.copyNightly()),
    ended: () => running,
  }
}

/** Says at once what is due by now, then looks every minute, until it is stopped; copies at once and every night. */
export async function startReminders(reminding: Reminding): Promise<StopReminding> {
  const { remind, copy, ended } = passes(reminding)
  await remind()
  await copy()
  const { schedule } = await import('node-cron')
  const options = { noOverlap: true, missedExecutionTolerance: LATE_MS, suppressMissedWarning: true, logger: SILENT }
  const tasks = [schedule(EVERY_MINUTE, remind, options), schedule(EVERY_NIGHT, copy, options)]
  return async () => {
    for (const task of tasks) await task.destroy()
    await ended()
  }
}
