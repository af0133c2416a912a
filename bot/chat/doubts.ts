import type { Invocation } from '../calls/invocation.ts'
import { canonical } from './stable-json.ts'

/** How long a call made again is taken for the one that may have been kept. */
const WINDOW_MS = 10 * 60_000

const MOST = 1000

interface Doubt {
  readonly attempt: string
  readonly call: string
  readonly atMs: number
}

/** Attempts of which nobody knows whether they were kept, by who made them; the same call made again is the same attempt. */
export interface Doubts {
  /** The attempt that the same call was before; null where none of it is in doubt. */
  of(userId: string, call: Invocation, nowMs: number): string | null
  add(userId: string, call: Invocation, attempt: string, nowMs: number): void
  /** It is known now. */
  settle(userId: string, call: Invocation): void
}

export function newDoubts(): Doubts {
  const doubts = new Map<string, Doubt>()
  const textOf = ({ path, options }: Invocation): string => canonical({ path, options })
  return {
    of(userId, call, nowMs) {
      const doubt = doubts.get(userId)
      const isSame = doubt?.call === textOf(call) && Math.abs(nowMs - doubt.atMs) <= WINDOW_MS
      return isSame ? doubt.attempt : null
    },
    add(userId, call, attempt, nowMs) {
      doubts.delete(userId)
      doubts.set(userId, { attempt, call: textOf(call), atMs: nowMs })
      const [oldest] = doubts.keys()
      if (doubts.size > MOST && oldest !== undefined) doubts.delete(oldest)
    },
    settle(userId, call) {
      if (doubts.get(userId)?.call === textOf(call)) doubts.delete(userId)
    },
  }
}
