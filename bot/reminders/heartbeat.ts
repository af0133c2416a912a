import type { Maintenance, Status } from '../../store/maintenance.ts'
import type { Store } from '../../store/store.ts'
import { trace } from '../chat/trace.ts'
import { isSent, type Surface } from './delivery.ts'

/** A little more than a minute, so that a pass that is short is recorded once, at its end. */
const SELDOM_MS = 65_000

interface Pulsed {
  readonly store: Pick<Store & Maintenance, 'read' | 'update' | 'claimDue' | 'heartbeat'>
  readonly surface: Surface
  /** When Discord was last heard of; left out where nothing is asked of it. */
  readonly heardMs?: () => number | null
  readonly now: () => number
  readonly log: (text: string) => void
}

export interface Pulse extends Pick<Pulsed, 'store' | 'surface'> {
  /** A pass has ended well. */
  readonly beat: () => Promise<void>
}

/**
 * The same store and surface, and what is done with them recorded: after each pass, and every minute of one that takes
 * long. That it cannot be recorded is logged once and disturbs nothing.
 */
export function withPulse({ store, surface, heardMs = () => null, now, log }: Pulsed): Pulse {
  let [sentMs, recordedMs]: [number | null, number] = [null, Number.NEGATIVE_INFINITY]
  let isFailing = false
  let recording = Promise.resolve()

  const record = async (status: Status): Promise<void> => {
    try {
      await store.heartbeat(status)
      isFailing = false
    } catch (error) {
      if (!isFailing) log(`status: ${trace(error)}`)
      isFailing = true
    }
  }
  const beat = (): Promise<void> => {
    const tickMs = now()
    recordedMs = tickMs
    const status = { tickMs, sentMs, heardMs: heardMs() }
    recording = recording.then(() => record(status))
    return recording
  }
  const beatSeldom = async (): Promise<void> => {
    if (Math.abs(now() - recordedMs) >= SELDOM_MS) await beat()
  }
  return {
    store: {
      ...store,
      async claimDue(untilMs, limit, leaseMs) {
        const named = await store.claimDue(untilMs, limit, leaseMs)
        await beatSeldom()
        return named
      },
    },
    surface: {
      ...surface,
      async send(delivery) {
        const sent = await surface.send(delivery)
        if (isSent(sent)) sentMs = now()
        await beatSeldom()
        return sent
      },
    },
    beat,
  }
}
