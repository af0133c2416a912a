import type { Person } from '../../store/person.ts'
import type { Invocation } from '../calls/invocation.ts'
import { lineOf } from '../calls/write-line.ts'
import type { Reply } from './reply.ts'

/** How long a reply is kept to say more of it. */
const WINDOW_MS = 30 * 60_000

const MOST = 1000

/** A reply as it was given. */
export interface LastReply {
  readonly reply: Reply
  /** How far what it tells of had come. */
  readonly state: string
  readonly atMs: number
}

/** Replies of the last half hour, by who got them and the call that they answer. In memory only. */
export interface LastReplies {
  of(userId: string, call: Invocation, nowMs: number): LastReply | null
  /** The call that was answered last. */
  lastOf(userId: string, nowMs: number): Invocation | null
  keep(userId: string, call: Invocation, last: LastReply): void
  forget(userId: string): void
}

/** How far what a reply tells of has come: its jar, or all of them, by their entries. What is only worked out stays as it is. */
export function stateOf({ jars }: Pick<Person, 'jars'>, path: string, { data }: Pick<Reply, 'data'>): string {
  if (!path.startsWith('jar ')) return ''
  const its = jars.filter(({ id }) => id === data.id)
  return (its.length === 0 ? jars : its).map(({ id, entries }) => `${id} ${entries.length}`).join()
}

export function newLastReplies(): LastReplies {
  const kept = new Map<string, LastReply & { readonly userId: string; readonly call: Invocation }>()
  const keyOf = (userId: string, call: Invocation): string => `${userId} ${lineOf(call)}`
  const isFresh = ({ atMs }: LastReply, nowMs: number): boolean => Math.abs(nowMs - atMs) <= WINDOW_MS
  return {
    of(userId, call, nowMs) {
      const last = kept.get(keyOf(userId, call))
      return last !== undefined && isFresh(last, nowMs) ? last : null
    },
    lastOf(userId, nowMs) {
      const last = [...kept.values()].findLast((each) => each.userId === userId)
      return last !== undefined && isFresh(last, nowMs) ? last.call : null
    },
    keep(userId, call, last) {
      const key = keyOf(userId, call)
      kept.delete(key)
      kept.set(key, { ...last, userId, call })
      const [oldest] = kept.keys()
      if (kept.size > MOST && oldest !== undefined) kept.delete(oldest)
    },
    forget(userId) {
      for (const [key, last] of kept) if (last.userId === userId) kept.delete(key)
    },
  }
}
