import { randomUUID } from 'node:crypto'
import { type Answer, answerOf, settled, type Wait } from './answer.ts'
import type { Gateway } from './gateway.ts'
import { type FakeInteraction, type Interactions, KIND, type Kind } from './interactions.ts'
import type { Json } from './json.ts'
import { botRights, channelJson, memberJson, userJson } from './place-json.ts'
import type { FakeChannel, FakeMessage, FakeUser, World } from './world.ts'

/** Who acts, where and how; what is left out is the fake's first user in its first channel. */
export interface By extends Wait {
  readonly user?: FakeUser
  readonly channel?: FakeChannel
  /** `user` where the app is installed to the person only: it has no seat in the place then. */
  readonly install?: 'guild' | 'user'
}

export interface Stage {
  readonly world: World
  readonly gateway: Gateway
  readonly interactions: Interactions
  readonly user: FakeUser
  readonly channel: FakeChannel
}

interface Started {
  readonly kind: Kind
  readonly data: Json
  readonly what: string
  readonly source?: FakeMessage | undefined
  /** What the interaction that showed a form says of itself. */
  readonly trigger?: Json
}

const UPLOAD_LIMIT = 10 * 1024 * 1024
const MEMBER_RIGHTS = '2147601408'
const CONTEXT = { guild: 0, dm: 1, group: 2 } as const

/** Whom the app is installed for: a guild's id under "0" ("0" in its own direct messages), a person's under "1". */
const owners = (channel: FakeChannel, user: FakeUser, isPersonal: boolean): Json => {
  if (isPersonal) return { 1: user.id }
  return { 0: channel.guild?.id ?? '0' }
}

const place = ({ guild }: FakeChannel, user: FakeUser, isPersonal: boolean): Json => {
  if (!guild) return { user: userJson(user) }
  return {
    guild_id: guild.id,
    guild: { id: guild.id, locale: guild.locale, features: [] },
    guild_locale: guild.locale,
    member: { ...memberJson(user), permissions: isPersonal ? '0' : MEMBER_RIGHTS },
  }
}

/** An interaction as Discord sends it, from Discord's documentation "Interaction Object". */
const interactionJson = (world: World, made: FakeInteraction, data: Json): Json => {
  const { id, token, kind, user, channel, source, isPersonal } = made
  return {
    id,
    application_id: world.applicationId,
    type: kind,
    token,
    version: 1,
    data,
    channel_id: channel.id,
    channel: { ...channelJson(channel, world), ...(channel.guild && { permissions: MEMBER_RIGHTS }) },
    app_permissions: isPersonal ? '0' : botRights(channel),
    locale: user.locale,
    entitlements: [],
    authorizing_integration_owners: owners(channel, user, isPersonal),
    context: CONTEXT[channel.kind],
    attachment_size_limit: UPLOAD_LIMIT,
    ...place(channel, user, isPersonal),
    ...(source && { message: source.json }),
  }
}

/** Makes an interaction, sends it to the bot and waits for what the bot answers. */
export const startInteraction = async (
  stage: Stage,
  { kind, data, what, source, trigger }: Started,
  by: By,
): Promise<Answer> => {
  const { world, gateway, interactions } = stage
  const { user = stage.user, channel = source?.channel ?? stage.channel, install = 'guild' } = by
  if (gateway.sessions().length === 0) throw new Error(`${what}: no bot is connected`)
  const isPersonal = install === 'user' || channel.kind === 'group' || channel.guild?.hasBot === false
  const id = world.clock.snowflake()
  const interaction: FakeInteraction = {
    id,
    token: `token-${randomUUID()}`,
    kind,
    user,
    channel,
    source,
    isPersonal,
    metadata: {
      id,
      type: kind,
      user: userJson(user),
      authorizing_integration_owners: owners(channel, user, isPersonal),
      ...(kind === KIND.component && { interacted_message_id: source?.json.id }),
      ...(trigger && { triggering_interaction_metadata: trigger }),
    },
    createdMs: world.clock.nowMs(),
    dispatchedAt: performance.now(),
    firstAnswerAt: undefined,
    callback: undefined,
    original: undefined,
    followUps: [],
    calls: [],
    open: 0,
    watchers: new Set(),
  }
  interactions.set(interaction.token, interaction)
  gateway.dispatch('INTERACTION_CREATE', interactionJson(world, interaction, data))
  await settled(interaction, what, by)
  return answerOf(interaction)
}
