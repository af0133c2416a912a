import { trace } from '../chat/trace.ts'
import { type Round, remind } from './remind.ts'

const BATCH = 64
/** A person whose reminding failed is left alone so long. */
const LEASE_MS = 5 * 60_000
/** People spoken to at once, so that one slow answer keeps only a few waiting. */
const LANES = 16

const inLanes = async (work: readonly string[], each: (item: string) => Promise<void>): Promise<void> => {
  const left = work.values()
  const lane = async (): Promise<void> => {
    for (const item of left) await each(item)
  }
  await Promise.all(Array.from({ length: LANES }, lane))
}

/**
 * One pass over everything that is due by now: every person once, the longest overdue first. One person's fault is logged
 * and stops nobody else. Throws what the store throws when asked who is due.
 */
export async function tick(round: Round): Promise<void> {
  const { store, nowMs, log } = round
  const done = new Set<string>()
  const one = async (userId: string): Promise<void> => {
    try {
      await remind(userId, round)
    } catch (error) {
      log(`reminding ${userId}: ${trace(error)}`)
    }
  }
  // Who is named a second time (a fault of ours) is leased from then on, so that the others get their turn.
  for (let named = await store.claimDue(nowMs, BATCH, LEASE_MS); named.length > 0; ) {
    const people = named.filter((userId) => !done.has(userId))
    for (const userId of people) done.add(userId)
    await inLanes(people, one)
    const rest = await store.claimDue(nowMs, BATCH, LEASE_MS)
    named = people.length === 0 && rest.every((userId) => done.has(userId)) ? [] : rest
  }
}
