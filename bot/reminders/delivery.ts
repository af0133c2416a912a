import type { Place, PostedIn, Settings } from '../../store/person.ts'
import type { Reply } from '../chat/reply.ts'

/** A nudge to look for. */
export interface Sought {
  /** At most 25 letters and digits; the same on every attempt. */
  readonly nudgeId: string
  readonly userId: string
  readonly place: Place
  /** When it was made: it was not sent before. */
  readonly madeMs: number
}

/** A nudge to send. */
export interface Delivery extends Sought {
  readonly reply: Reply
  /** Of whoever is reminded: what they have chosen. */
  readonly settings: Settings
  /** An attempt before this one may have arrived; the reply says so. */
  readonly mayHaveBeenSeen: boolean
  /** 1, 2, 3 … */
  readonly attempt: number
}

/**
 * `failed`: surely not sent, worth another try. `impossible`: this place will never take it. Where a message stands that can
 * be shown anew: sent.
 */
export type Sent = 'sent' | PostedIn | 'failed' | 'impossible'

export const isSent = (sent: Sent | null): sent is 'sent' | PostedIn =>
  sent !== null && sent !== 'failed' && sent !== 'impossible'

export type NudgeFound = 'there' | 'absent' | 'unknown'

/** What reminders need of where people are: it knows the places, and says things there. */
export interface Surface {
  /** Where somebody who chose `chosen` (or nothing) is reminded; null where this surface does not reach them. */
  placeOf(userId: string, chosen: Place | null): Place | null
  /** The place to fall back to where `place` is impossible; null where none is left. */
  after(place: Place): Place | null
  /** Settles within two minutes. What it throws means that nobody knows whether the nudge was sent. */
  send(delivery: Delivery): Promise<Sent>
  /** Whether a nudge that may have been sent was. Where there is none: `unknown`. */
  readonly findSent?: (sought: Sought) => Promise<NudgeFound>
}
