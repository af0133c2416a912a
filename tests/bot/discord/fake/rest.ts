import type { IncomingMessage, ServerResponse } from 'node:http'
import { setTimeout as sleep } from 'node:timers/promises'
import { answerRoutes } from './answer-routes.ts'
import { ApiError } from './api-error.ts'
import { checkPayload } from './check-payload.ts'
import type { Context, Handler, Result } from './handler.ts'
import type { Call, FakeInteraction } from './interactions.ts'
import type { Outage, Outages } from './outages.ts'
import { placeRoutes } from './place-routes.ts'
import { errorTree, type Problem, showProblem } from './problem.ts'
import type { Verdict } from './rate-buckets.ts'
import { type RestRequest, readRequest } from './read-request.ts'
import { type Match, matchRoute, type RouteName } from './routes.ts'

const HANDLERS: Readonly<Record<RouteName, Handler>> = { ...placeRoutes, ...answerRoutes }

export interface Recorded extends RestRequest, Call {
  readonly route: RouteName | 'unknown'
  readonly params: Match['params']
}

/** Something the bot has sent that Discord would refuse or that nobody has checked. */
export interface Fault {
  readonly method: string
  readonly path: string
  readonly body: unknown
  readonly problems: readonly string[]
}

export interface Rest {
  readonly context: Omit<Context, 'request' | 'blame'>
  readonly outages: Outages
  readonly buckets: ((match: Match) => Verdict) | undefined
  readonly requests: Recorded[]
  readonly faults: Fault[]
  readonly counts: { rateLimited: number }
}

interface Answer extends Result {
  readonly headers?: Readonly<Record<string, string>>
}

const tooMany = (retryAfterS: number, isGlobal: boolean, headers: Readonly<Record<string, string>> = {}): Answer => ({
  status: 429,
  body: { message: 'You are being rate limited.', retry_after: retryAfterS, global: isGlobal, code: 0 },
  headers: { ...headers, 'retry-after': String(retryAfterS), ...(isGlobal && { 'x-ratelimit-global': 'true' }) },
})

/** The answer an outage gives instead. A 502 comes from what stands before Discord, so it is no JSON. */
const struck = ({ status, code = 0, retryAfterS = 0.05, isGlobal = false }: Outage): Answer | undefined => {
  if (status === undefined) return undefined
  if (status === 429) return tooMany(retryAfterS, isGlobal)
  return { status, body: status === 502 ? '<html>502 Bad Gateway</html>' : { code, message: `Outage ${status}` } }
}

const answerTo = (
  rest: Rest,
  request: RestRequest,
  match: Match,
  problems: readonly Problem[],
  context: Context,
): Answer => {
  if (match.auth && request.authorization !== `Bot ${context.world.token}`) throw new ApiError(0)
  const verdict = rest.buckets?.(match)
  if (verdict?.retryAfterS !== undefined) {
    rest.counts.rateLimited += 1
    return tooMany(verdict.retryAfterS, verdict.isGlobal, verdict.headers)
  }
  if (problems.length > 0) throw new ApiError(50035, errorTree(problems))
  return { ...HANDLERS[match.name](context, match.params), ...(verdict && { headers: verdict.headers }) }
}

const orError = (answer: () => Answer): Answer => {
  try {
    return answer()
  } catch (error) {
    if (error instanceof ApiError) return { status: error.status, body: error.body }
    throw error
  }
}

const write = (response: ServerResponse, { status, body, headers }: Answer): void => {
  if (status === 204) response.writeHead(204, headers).end()
  else if (typeof body === 'string') response.writeHead(status, { ...headers, 'content-type': 'text/html' }).end(body)
  else response.writeHead(status, { ...headers, 'content-type': 'application/json' }).end(JSON.stringify(body))
}

/** Notes a request with the interaction it belongs to; gives what notes its end. */
const follow = (interaction: FakeInteraction | undefined, call: Call): ((status: number) => void) => {
  if (!interaction) return (status) => Object.assign(call, { status })
  interaction.firstAnswerAt ??= performance.now()
  interaction.calls.push(call)
  interaction.open += 1
  return (status) => {
    call.status = status
    interaction.open -= 1
    for (const watch of interaction.watchers) watch()
  }
}

/** Takes one request from its first byte to its answer. */
export const handleRequest = async (rest: Rest, incoming: IncomingMessage, response: ServerResponse): Promise<void> => {
  const request = await readRequest(incoming)
  const { method, path, body, files } = request
  const match = matchRoute(method, path)
  const call: Recorded = { ...request, route: match?.name ?? 'unknown', params: match?.params ?? {}, status: 0 }
  rest.requests.push(call)
  const ended = follow(rest.context.interactions.get(match?.params.token ?? ''), call)
  const blame = (found: readonly Problem[]): void => {
    if (found.length > 0) rest.faults.push({ method, path, body, problems: found.map(showProblem) })
  }
  const problems = checkPayload(method, path, body, files)
  blame(problems)
  const finish = (answer: Answer | undefined): void => {
    if (answer) write(response, answer)
    else response.destroy()
    ended(answer?.status ?? 0)
  }
  if (!match) return finish({ status: 404, body: { code: 0, message: '404: Not Found' } })
  const outage = rest.outages.take(match, request)
  if (outage?.delayMs) await sleep(outage.delayMs)
  const isStruck = outage?.closes || outage?.status !== undefined
  const context = { ...rest.context, request, blame }
  const handled = (): Answer => orError(() => answerTo(rest, request, match, problems, context))
  if (!isStruck) return finish(handled())
  if (outage.isProcessed) handled()
  finish(outage.closes ? undefined : struck(outage))
}
