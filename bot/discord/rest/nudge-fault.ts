import { codeOf, restFault } from './rest-fault.ts'

/** What an error says of a request: this place will never take it; it was surely not done; nobody knows. */
export type NudgeFault = 'impossible' | 'failed' | 'unknown'

/** Discord's number for a channel that is not there. */
export const UNKNOWN_CHANNEL = 10003
/** And for somebody who is not in the server. */
export const UNKNOWN_MEMBER = 10007

/**
 * Refusals of a place that come with another status than 403 or 404: no server in common, an archived or locked thread,
 * what a server's own filter blocks, a channel of another kind.
 */
const CLOSED = new Set([50278, 50083, 160005, 200000, 200001, 50008, 50024])

export const nudgeFault = (error: unknown): NudgeFault => {
  // discord.js's own, before anything was sent.
  if (error instanceof Error && error.name.startsWith('RateLimitError')) return 'failed'
  const fault = restFault(error)
  if (fault === 'no_rights') return 'impossible'
  if (fault === 'not_taken') return CLOSED.has(codeOf(error) as number) ? 'impossible' : 'failed'
  return fault === 'wrong_token' ? 'failed' : 'unknown'
}
