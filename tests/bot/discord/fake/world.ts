import type { APIMessage } from 'discord.js'
import type { CommandNode } from './check-commands.ts'
import type { FakeClock } from './fake-clock.ts'
import type { Upload } from './json.ts'

/** What the bot may be denied in a channel. */
export type Right = 'ViewChannel' | 'SendMessages' | 'ReadMessageHistory' | 'AttachFiles' | 'EmbedLinks'

export interface FakeUser {
  readonly id: string
  readonly name: string
  readonly locale: string
  readonly isBot: boolean
  hasClosedDms: boolean
}

export interface FakeGuild {
  readonly id: string
  readonly name: string
  readonly locale: string
  readonly members: Set<FakeUser>
  /** False where the app is installed to people only. */
  hasBot: boolean
  /** Whether Discord has trouble with it: it is named at the start, and not told of. */
  isUnavailable: boolean
}

export interface FakeMessage {
  readonly channel: FakeChannel
  readonly author: FakeUser
  /** As Discord answers it. */
  json: APIMessage
  /** Those it has now: a change may send more and leave out others. */
  files: readonly Upload[]
  /** The only one who sees it. */
  readonly onlyFor: FakeUser | undefined
  readonly sentMs: number
  edits: number
  isDeleted: boolean
}

export interface FakeChannel {
  readonly id: string
  readonly kind: 'guild' | 'dm' | 'group'
  readonly name: string
  readonly guild: FakeGuild | undefined
  /** Who it is with, of a direct message. */
  readonly people: readonly FakeUser[]
  readonly denied: Set<Right>
  readonly messages: Map<string, FakeMessage>
  isDeleted: boolean
}

export type Registered = CommandNode & { readonly id: string; readonly version: string }

export interface World {
  readonly clock: FakeClock
  readonly applicationId: string
  readonly token: string
  /** The id of somebody or some place, by a name such as `user wren`. */
  readonly idFor: (what: string) => string
  readonly bot: FakeUser
  /** With fewer Discord does not let the bot in, since no shard may have more than 2,500 servers. */
  leastShards: number
  readonly guilds: Map<string, FakeGuild>
  readonly channels: Map<string, FakeChannel>
  readonly users: Map<string, FakeUser>
  /** Lists of commands by guild, the global one under an empty key. */
  readonly commands: Map<string, readonly Registered[]>
  /** Where files can be fetched from, without a slash at its end. */
  filesUrl: string
  readonly files: Map<string, Upload>
  /** Messages by author and nonce. */
  readonly nonces: Map<string, FakeMessage>
}

export const newWorld = (clock: FakeClock, token: string, idFor: World['idFor'] = clock.snowflake): World => {
  const applicationId = idFor('application')
  const bot: FakeUser = { id: applicationId, name: 'larderbell', locale: 'en-GB', isBot: true, hasClosedDms: false }
  return {
    clock,
    applicationId,
    token,
    idFor,
    bot,
    leastShards: 1,
    guilds: new Map(),
    channels: new Map(),
    users: new Map([[bot.id, bot]]),
    commands: new Map(),
    filesUrl: '',
    files: new Map(),
    nonces: new Map(),
  }
}

export const addUser = (world: World, name: string, locale = 'en-GB'): FakeUser => {
  const user: FakeUser = { id: world.idFor(`user ${name}`), name, locale, isBot: false, hasClosedDms: false }
  world.users.set(user.id, user)
  return user
}

export const addGuild = (world: World, name: string, { hasBot = true, locale = 'en-GB' } = {}): FakeGuild => {
  const guild: FakeGuild = {
    id: world.idFor(`guild ${name}`),
    name,
    locale,
    members: new Set(),
    hasBot,
    isUnavailable: false,
  }
  if (hasBot) guild.members.add(world.bot)
  world.guilds.set(guild.id, guild)
  return guild
}

export const addChannel = (
  world: World,
  place: Pick<FakeChannel, 'kind' | 'name' | 'guild' | 'people'>,
): FakeChannel => {
  const channel = {
    ...place,
    id: world.idFor(`${place.kind} channel ${place.name}`),
    denied: new Set<Right>(),
    messages: new Map(),
    isDeleted: false,
  }
  world.channels.set(channel.id, channel)
  return channel
}

/** The one direct message channel between the bot and somebody. */
export const dmWith = (world: World, user: FakeUser): FakeChannel =>
  [...world.channels.values()].find(({ kind, people }) => kind === 'dm' && people.includes(user)) ??
  addChannel(world, { kind: 'dm', name: user.name, guild: undefined, people: [user] })

/** Whether the bot is in the place at all and may do this. */
export const botMay = ({ kind, guild, denied }: FakeChannel, right: Right): boolean =>
  kind !== 'group' && (guild ? guild.hasBot : true) && !denied.has('ViewChannel') && !denied.has(right)
