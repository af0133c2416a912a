import type { RestRequest } from './read-request.ts'
import type { Match, RouteName } from './routes.ts'

/** How a request goes wrong. Several may be given: the delay first. */
export interface Outage {
  readonly delayMs?: number
  /** The status answered instead, with Discord's error code for a 403 or 404. */
  readonly status?: number
  readonly code?: number
  /** Of a 429, in seconds. */
  readonly retryAfterS?: number
  /** Whether a 429 is for all routes. */
  readonly isGlobal?: boolean
  /** Closes the socket instead of answering. */
  readonly closes?: boolean
  /** Whether what was asked is done all the same, and only its answer is lost. */
  readonly isProcessed?: boolean
}

export interface OutageScope {
  /** How many requests it strikes; 1 when left out. */
  readonly times?: number
  /** Which requests of the route it strikes; all when left out. */
  readonly when?: (request: RestRequest, params: Match['params']) => boolean
}

export interface Outages {
  /** Plans one for a route, or for every route (`*`); gives what takes it back. */
  readonly plan: (route: RouteName | '*', outage: Outage, scope?: OutageScope) => () => void
  readonly take: (match: Match, request: RestRequest) => Outage | undefined
}

export const newOutages = (): Outages => {
  const planned: { route: RouteName | '*'; outage: Outage; left: number; when: NonNullable<OutageScope['when']> }[] = []
  return {
    plan: (route, outage, { times = 1, when = () => true } = {}) => {
      const entry = { route, outage, left: times, when }
      planned.push(entry)
      return () => {
        entry.left = 0
      }
    },
    take: (match, request) => {
      const found = planned.find(
        ({ route, left, when }) => left > 0 && (route === '*' || route === match.name) && when(request, match.params),
      )
      if (found) found.left -= 1
      return found?.outage
    },
  }
}
