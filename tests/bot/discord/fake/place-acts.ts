import { type Gateway, INTENT } from './gateway.ts'
import type { Json } from './json.ts'
import { createMessage } from './messages.ts'
import { channelJson, guildCreateJson, memberJson, userJson } from './place-json.ts'
import {
  addChannel,
  addGuild,
  addUser,
  dmWith,
  type FakeChannel,
  type FakeGuild,
  type FakeMessage,
  type FakeUser,
  type Right,
  type World,
} from './world.ts'

/** A message that answers another: https://discord.com/developers/docs/resources/message#message-object-message-types. */
const REPLY = 19

/** Changes of places and people, each told to the bot as Discord does. */
export const placeActs = (world: World, gateway: Gateway) => {
  const tell = (event: string, data: Json): void => gateway.dispatch(event, data, INTENT.guilds)
  return {
    /** A new person, without a server. */
    newUser: (name: string, locale?: string): FakeUser => addUser(world, name, locale),
    join: (guild: FakeGuild, user: FakeUser): void => {
      guild.members.add(user)
    },
    leave: (guild: FakeGuild, user: FakeUser): void => {
      guild.members.delete(user)
    },
    /** A new server, with the bot in it or with the app only in its people's hands. */
    newGuild: (
      name: string,
      {
        channels = [],
        ...options
      }: {
        readonly hasBot?: boolean
        readonly locale?: string
        /** There from its beginning, each with what the bot may not do in it. */
        readonly channels?: readonly (readonly [name: string, denied: readonly Right[]])[]
      } = {},
    ): FakeGuild => {
      const guild = addGuild(world, name, options)
      for (const [channelName, denied] of channels) {
        const channel = addChannel(world, { kind: 'guild', name: channelName, guild, people: [] })
        for (const right of denied) channel.denied.add(right)
      }
      if (guild.hasBot) tell('GUILD_CREATE', guildCreateJson(guild, world))
      return guild
    },
    channelsOf: (guild: FakeGuild): readonly FakeChannel[] =>
      [...world.channels.values()].filter((channel) => channel.guild === guild),
    /** The bot is thrown out of a server. */
    removeBot: (guild: FakeGuild): void => {
      guild.hasBot = false
      guild.members.delete(world.bot)
      tell('GUILD_DELETE', { id: guild.id })
    },
    newChannel: (guild: FakeGuild, name: string, denied: readonly Right[] = []): FakeChannel => {
      const channel = addChannel(world, { kind: 'guild', name, guild, people: [] })
      for (const right of denied) channel.denied.add(right)
      if (guild.hasBot) tell('CHANNEL_CREATE', channelJson(channel, world))
      return channel
    },
    /** Takes rights from the bot in a channel, and gives it all others. */
    deny: (channel: FakeChannel, ...rights: readonly Right[]): void => {
      channel.denied.clear()
      for (const right of rights) channel.denied.add(right)
      if (channel.guild?.hasBot) tell('CHANNEL_UPDATE', channelJson(channel, world))
    },
    removeChannel: (channel: FakeChannel): void => {
      channel.isDeleted = true
      if (channel.guild?.hasBot) tell('CHANNEL_DELETE', channelJson(channel, world))
    },
    /** The direct messages of a person with the bot. */
    dm: (user: FakeUser): FakeChannel => dmWith(world, user),
    /** Direct messages among people, where an app installed to one of them can be called. */
    newGroup: (name: string, ...people: readonly FakeUser[]): FakeChannel =>
      addChannel(world, { kind: 'group', name, guild: undefined, people }),
    /** Somebody else writes something, as an answer to a message where one is given, whose author that pings. */
    write: (channel: FakeChannel, author: FakeUser, content: string, answered?: FakeMessage) => {
      const { message } = createMessage(world, { channel, author, body: { content } })
      const { guild } = channel
      const named = [
        ...[...content.matchAll(/<@!?(\d+)>/g)].map(([, id]) => ({ id: id! })),
        ...(answered ? [{ id: answered.author.id }] : []),
      ]
      // Without the privileged intent the text comes along in private, and where the bot is named.
      const isForBot = guild === undefined || named.some(({ id }) => id === world.bot.id)
      gateway.dispatch(
        'MESSAGE_CREATE',
        {
          ...message.json,
          content: isForBot ? content : '',
          mentions: named,
          ...(answered && { type: REPLY, message_reference: { message_id: answered.json.id } }),
          author: userJson(author),
          ...(guild && { guild_id: guild.id, member: { ...memberJson(author), user: undefined } }),
        } as unknown as Json,
        guild ? INTENT.guildMessages : INTENT.directMessages,
      )
      return message
    },
  }
}
