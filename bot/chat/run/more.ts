import type { Store } from '../../../store/store.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { type DepthShown, hasMore } from '../depth.ts'
import { stateOf } from '../last-replies.ts'
import type { CallOutcome, Dispatch } from './call-outcome.ts'
import { attempt, execute } from './execute.ts'
import { onTrial } from './on-trial.ts'

/** `again`: worked out anew; `moved_on`: the jar as it stands now; `nothing`: the first screen was all. */
export type MoreLead = 'again' | 'moved_on' | 'nothing'

/** What stands deeper in a reply. */
export interface MoreSaid {
  readonly lead: MoreLead | null
  readonly outcome: CallOutcome
  readonly shown: DepthShown
}

/** The same store, and whether anything was changed in it. */
function watched(store: Store): { readonly store: Store; readonly hasChanged: () => boolean } {
  let hasChanged = false
  return {
    hasChanged: () => hasChanged,
    store: {
      ...store,
      update: (userId, change) =>
        store.update(userId, (person) => {
          const next = change(person)
          if (next !== null) hasChanged = true
          return next
        }),
      remove: (userId) => {
        hasChanged = true
        return store.remove(userId)
      },
    },
  }
}

/** Keeps a reply, so that more can be said of it. Never throws. */
export async function keepReply(outcome: CallOutcome, dispatch: Dispatch): Promise<void> {
  const { replies, userId, nowMs, store, log } = dispatch
  if (replies === undefined || !outcome.ok || outcome.call === undefined) return
  const { path, reply, call } = outcome
  const read = await attempt(
    () => store.read(userId),
    () => call,
    log,
  )
  if (read.ok) replies.keep(userId, call, { reply, state: stateOf(read.result, path, reply), atMs: nowMs })
}

/** What stands about a jar now, or all of them. */
const nowOf = ({ path, options }: Invocation): Invocation => {
  const jar = options.jar ?? options.name
  if (jar === undefined || !path.startsWith('jar ')) return { path: 'jar list', options: {} }
  return { path: 'jar show', options: { jar } }
}

/** For whoever asked, without what stands with the first screen already. */
function alone(outcome: CallOutcome): CallOutcome {
  if (!outcome.ok) return outcome
  const { files: _, posted: __, visibility, ...reply } = outcome.reply
  return { ...outcome, reply: { ...reply, ...(visibility === 'confidential' && { visibility }) } }
}

/**
 * The rest of a reply. It is as old as the reply where nothing has happened since; else a call that only shows is run
 * again, and in the place of one that records stands what is known now. Never throws.
 */
export async function moreOf(call: Invocation, dispatch: Dispatch): Promise<MoreSaid> {
  const { outcome, ...said } = await restOf(call, dispatch)
  return { ...said, outcome: alone(outcome) }
}

async function restOf(call: Invocation, dispatch: Dispatch): Promise<MoreSaid> {
  const { replies, userId, nowMs, store, log } = dispatch
  const last = replies?.of(userId, call, nowMs) ?? null
  if (last !== null) {
    const read = await attempt(
      () => store.read(userId),
      () => call,
      log,
    )
    if (!read.ok) return { lead: null, outcome: read, shown: 'more' }
    const { reply, state } = last
    if (stateOf(read.result, call.path, reply) === state) {
      const outcome = { ok: true, path: call.path, reply } as const
      return hasMore(reply) ? { lead: null, outcome, shown: 'more' } : { lead: 'nothing', outcome, shown: 'first' }
    }
  }
  const trial = onTrial(dispatch)
  const { store: tried, hasChanged } = watched(trial.store)
  const outcome = await execute(call, { ...trial, store: tried })
  if (outcome.ok && !hasChanged()) return { lead: 'again', outcome, shown: 'whole' }
  return { lead: 'moved_on', outcome: await execute(nowOf(call), dispatch), shown: 'whole' }
}
