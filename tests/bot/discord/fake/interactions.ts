import { ApiError } from './api-error.ts'
import type { Json } from './json.ts'
import type { FakeChannel, FakeMessage, FakeUser, World } from './world.ts'

/** Kinds of interaction by Discord's number. */
export const KIND = { command: 2, component: 3, autocomplete: 4, modal: 5 } as const
export type Kind = (typeof KIND)[keyof typeof KIND]

/** Kinds of callback by Discord's number. */
export const CALLBACK = { message: 4, deferMessage: 5, deferUpdate: 6, update: 7, choices: 8, modal: 9 } as const

const FIRST_ANSWER_MS = 3000
const TOKEN_MS = 15 * 60_000

/** A request of the bot's about one interaction. */
export interface Call {
  readonly method: string
  readonly route: string
  readonly body: unknown
  /** 0 while it is being answered, and when the socket was closed instead. */
  status: number
}

export interface FakeInteraction {
  readonly id: string
  readonly token: string
  readonly kind: Kind
  readonly user: FakeUser
  readonly channel: FakeChannel
  /** The message whose button was pressed, also when a form was opened from it. */
  readonly source: FakeMessage | undefined
  /** Installed to the person only, not to the place. */
  readonly isPersonal: boolean
  /** What the message made in answer says about where it comes from. */
  readonly metadata: Json
  readonly createdMs: number
  readonly dispatchedAt: number
  firstAnswerAt: number | undefined
  callback: { readonly type: number; readonly data: Json } | undefined
  /** What `@original` is. */
  original: FakeMessage | undefined
  readonly followUps: FakeMessage[]
  readonly calls: Call[]
  /** Requests that have come and are not answered yet. */
  open: number
  readonly watchers: Set<() => void>
}

export type Interactions = Map<string, FakeInteraction>

/** The interaction of a callback, which has to be in time and the first. */
export const forCallback = (world: World, all: Interactions, id: string, token: string): FakeInteraction => {
  const interaction = all.get(token)
  const isKnown = interaction?.id === id && world.clock.nowMs() - interaction.createdMs <= FIRST_ANSWER_MS
  if (interaction?.id === id && interaction.callback) throw new ApiError(40060)
  if (!isKnown) throw new ApiError(10062)
  return interaction
}

/** The interaction of a later request, which has to have been acknowledged. */
export const forWebhook = (world: World, all: Interactions, token: string): FakeInteraction => {
  const interaction = all.get(token)
  if (!interaction?.callback) throw new ApiError(10015)
  if (world.clock.nowMs() - interaction.createdMs > TOKEN_MS) throw new ApiError(50027)
  return interaction
}

/** One of the messages of an interaction by its id, or `@original`. */
export const messageOf = (interaction: FakeInteraction, id: string): FakeMessage => {
  const { original, followUps, source } = interaction
  const own = [original, ...followUps, source]
  const message = id === '@original' ? original : own.find((one) => one?.json.id === id)
  if (!message || message.isDeleted) throw new ApiError(10008)
  return message
}
