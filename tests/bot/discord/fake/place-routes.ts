import { ApiError } from './api-error.ts'
import type { CommandNode } from './check-commands.ts'
import type { Context, Handler, Result } from './handler.ts'
import type { Json } from './json.ts'
import { createMessage, editMessage } from './messages.ts'
import { applicationJson, channelJson, guildJson, memberJson, userJson } from './place-json.ts'
import { botMay, dmWith, type FakeChannel, type FakeMessage, type FakeUser, type Right } from './world.ts'

const MOST_MESSAGES = 100
const FEWEST_MESSAGES = 50

const ok = (body: unknown): Result => ({ status: 200, body })

const channelOf = ({ world }: Context, id: string, right: Right = 'ViewChannel'): FakeChannel => {
  const channel = world.channels.get(id)
  if (!channel || channel.isDeleted) throw new ApiError(10003)
  if (!botMay(channel, 'ViewChannel')) throw new ApiError(50001)
  if (!botMay(channel, right)) throw new ApiError(50013)
  return channel
}

const messageOf = (channel: FakeChannel, id: string): FakeMessage => {
  const message = channel.messages.get(id)
  if (!message) throw new ApiError(10008)
  return message
}

const own = (context: Context, params: Readonly<Record<string, string>>): FakeMessage => {
  const message = messageOf(channelOf(context, params.channel!), params.message!)
  if (message.author !== context.world.bot) throw new ApiError(50005)
  return message
}

const send: Handler = (context, params) => {
  const { world, request, announce } = context
  const channel = channelOf(context, params.channel!, 'SendMessages')
  if (channel.people.some(({ hasClosedDms }) => hasClosedDms)) throw new ApiError(50007)
  if (request.files.length > 0 && !botMay(channel, 'AttachFiles')) throw new ApiError(50013)
  const made = { channel, author: world.bot, body: request.body as Json, files: request.files }
  const { message, isNew } = createMessage(world, made)
  if (isNew) announce('MESSAGE_CREATE', message)
  return ok(message.json)
}

const edit: Handler = (context, params) => {
  const { world, request, blame, announce } = context
  const message = own(context, params)
  editMessage(world, message, { body: request.body as Json, files: request.files, blame })
  announce('MESSAGE_UPDATE', message)
  return ok(message.json)
}

const remove: Handler = (context, params) => {
  const message = own(context, params)
  message.isDeleted = true
  message.channel.messages.delete(message.json.id)
  return { status: 204 }
}

/** The newest first; without the right to read history Discord gives an empty list. */
const messages: Handler = (context, params) => {
  const channel = channelOf(context, params.channel!)
  if (!botMay(channel, 'ReadMessageHistory')) return ok([])
  const { query } = context.request
  const most = Math.min(MOST_MESSAGES, Number(query.get('limit') ?? FEWEST_MESSAGES))
  const before = BigInt(query.get('before') ?? Number.MAX_SAFE_INTEGER * 1_000_000)
  const after = BigInt(query.get('after') ?? 0)
  const inRange = [...channel.messages.values()].filter(({ json: { id } }) => BigInt(id) < before && BigInt(id) > after)
  return ok(
    inRange
      .reverse()
      .slice(0, most)
      .map(({ json }) => json),
  )
}

const commandsOf =
  (guild: boolean): Handler =>
  ({ world }, params) =>
    ok(world.commands.get(guild ? params.guild! : '') ?? [])

const setCommands =
  (isGuild: boolean): Handler =>
  ({ world, request }, params) => {
    const guildId = isGuild ? params.guild! : ''
    if (isGuild && !world.guilds.get(guildId)?.hasBot) throw new ApiError(50001)
    const before = world.commands.get(guildId) ?? []
    const registered = (request.body as readonly CommandNode[]).map((command) => ({
      type: 1,
      default_member_permissions: null,
      nsfw: false,
      ...command,
      id: before.find(({ name }) => name === command.name)?.id ?? world.clock.snowflake(),
      version: world.clock.snowflake(),
      application_id: world.applicationId,
      ...(isGuild && { guild_id: guildId }),
    }))
    world.commands.set(guildId, registered)
    return ok(registered)
  }

const openDm: Handler = ({ world, request }) => {
  const user = world.users.get(String((request.body as Json).recipient_id))
  if (!user) throw new ApiError(10013)
  return ok(channelJson(dmWith(world, user), world))
}

const guildOf = ({ world }: Context, id: string) => {
  const guild = world.guilds.get(id)
  if (!guild) throw new ApiError(10004)
  if (!guild.hasBot) throw new ApiError(50001)
  return guild
}

const member: Handler = (context, params) => {
  const members: ReadonlySet<FakeUser> = guildOf(context, params.guild!).members
  const user = [...members].find(({ id }) => id === params.user)
  if (!user) throw new ApiError(10007)
  return ok(memberJson(user))
}

const user: Handler = ({ world }, params) => {
  const found = world.users.get(params.user!)
  if (!found) throw new ApiError(10013)
  return ok(userJson(found))
}

const gatewayBot: Handler = ({ gatewayUrl, world }) =>
  ok({
    url: gatewayUrl,
    shards: world.leastShards,
    session_start_limit: { total: 1000, remaining: 999, reset_after: 86_400_000, max_concurrency: 16 },
  })

export const placeRoutes = {
  gatewayBot,
  me: ({ world }) => ok({ ...userJson(world.bot), mfa_enabled: false, locale: world.bot.locale, verified: true }),
  application: ({ world }) => ok(applicationJson(world)),
  ownApplication: ({ world }) => ok(applicationJson(world)),
  globalCommands: commandsOf(false),
  setGlobalCommands: setCommands(false),
  guildCommands: commandsOf(true),
  setGuildCommands: setCommands(true),
  user,
  openDm,
  guild: (context, params) => ok(guildJson(guildOf(context, params.guild!))),
  member,
  channel: (context, params) => ok(channelJson(channelOf(context, params.channel!), context.world)),
  messages,
  message: (context, params) =>
    ok(messageOf(channelOf(context, params.channel!, 'ReadMessageHistory'), params.message!).json),
  send,
  edit,
  remove,
} satisfies Readonly<Record<string, Handler>>
