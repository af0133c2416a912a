import type { Interactions } from './interactions.ts'
import type { Problem } from './problem.ts'
import type { RestRequest } from './read-request.ts'
import type { FakeMessage, World } from './world.ts'

/** What the handling of a request may read and do. */
export interface Context {
  readonly world: World
  readonly interactions: Interactions
  readonly request: RestRequest
  /** Remembers a fault of the bot's that only the state shows. */
  readonly blame: (problems: readonly Problem[]) => void
  /** Sends a message over the gateway to those who listen to messages. */
  readonly announce: (event: 'MESSAGE_CREATE' | 'MESSAGE_UPDATE', message: FakeMessage) => void
  readonly gatewayUrl: string
}

/** An answer; one of status 204 has neither body nor type, or discord.js throws. */
export interface Result {
  readonly status: number
  readonly body?: unknown
}

export type Handler = (context: Context, params: Readonly<Record<string, string>>) => Result
